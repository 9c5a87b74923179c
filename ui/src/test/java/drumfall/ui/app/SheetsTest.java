// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.train.Train;
import drumfall.ui.plugin.PluginFolder;
import drumfall.ui.presenter.Inquiry;
import drumfall.ui.presenter.PlacedState;
import drumfall.ui.presenter.SmallBriefs;
import drumfall.ui.presenter.StripFigure;
import drumfall.ui.presenter.Texts;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheets of the drawing in the open window. */
@NeedsDisplay
class SheetsTest {
    @TempDir
    Path home;

    private OpenWindow opened() {
        OpenWindow window = new OpenWindow(
                SmallBriefs.small(),
                home,
                List.of(new PluginFolder(PluginFolder.Origin.USER, home.resolve("plugins"))));
        window.untilSolved();
        return window;
    }

    @Test
    void the_placed_train_is_seen_from_the_dial_and_in_section() {
        try (OpenWindow window = opened()) {
            JComponent elevation = window.named("placed.elevation", JComponent.class);
            assertThat(OpenWindow.<Boolean>on(elevation::isShowing)).isTrue();
            window.until("the train is placed", shown -> shown.placed().state() instanceof PlacedState.Placed);
            assertThat(SpokenNames.lackingIn(window)).isEmpty();
            JLabel verdict = window.named("drawing.verdict", JLabel.class);
            assertThat(OpenWindow.<String>on(verdict::getText)).endsWith(Texts.of("drawing.placed.placed"));
            window.command("command.section");
            JComponent section = window.named("placed.section", JComponent.class);
            assertThat(OpenWindow.<Boolean>on(section::isShowing)).isTrue();
            assertThat(OpenWindow.<Boolean>on(elevation::isShowing)).isFalse();
            assertThat(SpokenNames.lackingIn(window)).isEmpty();
        }
    }

    @Test
    void the_wheels_have_a_sheet_and_the_mesh_looked_into_has_one() {
        try (OpenWindow window = opened()) {
            JComponent train = window.named("drawing", JComponent.class);
            JComponent mesh = window.named("mesh.drawing", JComponent.class);
            window.command("command.wheels");
            assertThat(OpenWindow.<Boolean>on(train::isShowing)).isTrue();
            window.command("command.meshsheet");
            window.until(
                    "the mesh is traced", shown -> shown.mesh().state().traced().isPresent());
            assertThat(OpenWindow.<Boolean>on(mesh::isShowing)).isTrue();
            assertThat(OpenWindow.<Boolean>on(train::isShowing)).isFalse();
            assertThat(SpokenNames.lackingIn(window)).isEmpty();
            window.command("command.wheels");
            assertThat(OpenWindow.<Boolean>on(train::isShowing)).isTrue();
        }
    }

    @Test
    void the_mesh_turns_only_while_it_is_set_turning() {
        try (OpenWindow window = opened()) {
            window.command("command.meshsheet");
            window.until(
                    "the mesh is traced", shown -> shown.mesh().state().traced().isPresent());
            assertThat(OpenWindow.<Boolean>on(() -> window.program().mesh().turning()))
                    .isFalse();
            window.press("mesh.turn");
            window.until("the wheel has moved", shown -> shown.mesh().turn() > 0);
            window.press("mesh.turn");
            double stopped = OpenWindow.on(() -> window.program().mesh().turn());
            window.command("command.wheels");
            window.command("command.meshsheet");
            assertThat(OpenWindow.<Double>on(() -> window.program().mesh().turn()))
                    .isEqualTo(stopped);
        }
    }

    @Test
    void a_figure_of_the_mesh_opens_its_card() {
        try (OpenWindow window = opened()) {
            window.command("command.meshsheet");
            window.until(
                    "the mesh is traced", shown -> shown.mesh().state().traced().isPresent());
            window.press("figure.mesh.RESERVE");
            assertThat(OpenWindow.<Boolean>on(() -> OpenWindow.all(
                                    window.program().window().getLayeredPane())
                            .anyMatch(component -> "where".equals(component.getName()) && component.isShowing())))
                    .isTrue();
        }
    }

    @Test
    void the_power_has_a_sheet_whose_figures_open_their_cards() {
        try (OpenWindow window = opened()) {
            window.command("command.powersheet");
            window.until(
                    "the power is reckoned",
                    shown -> shown.power().state().picture().isPresent());
            JComponent flow = window.named("power.flow", JComponent.class);
            assertThat(OpenWindow.<Boolean>on(flow::isShowing)).isTrue();
            window.until(
                    "savings are known",
                    shown -> shown.power().findings().found().isPresent());
            assertThat(SpokenNames.lackingIn(window)).isEmpty();
            for (String figure :
                    List.of("figure.power.LEAST", "power.PENDULUM.0", "power.LIGHTER_ESCAPE_WHEEL." + last(window))) {
                window.press(figure);
                assertThat(cardIsOpen(window)).as(figure).isTrue();
            }
            window.command("command.wheels");
            assertThat(OpenWindow.<Boolean>on(flow::isShowing)).isFalse();
        }
    }

    private static int last(OpenWindow window) {
        return window.chosen().meshes().size();
    }

    private static boolean cardIsOpen(OpenWindow window) {
        return OpenWindow.on(() -> OpenWindow.all(window.program().window().getLayeredPane())
                .anyMatch(component -> "where".equals(component.getName()) && component.isShowing()));
    }

    @Test
    void easing_has_a_sheet_that_answers_when_asked_and_puts_a_line_into_the_brief() {
        try (OpenWindow window = opened()) {
            JComponent sheet = window.named("easing", JComponent.class);
            assertThat(OpenWindow.<Boolean>on(sheet::isShowing)).isFalse();
            window.command("command.easingsheet");
            assertThat(OpenWindow.<Boolean>on(sheet::isShowing)).isTrue();
            assertThat(SpokenNames.lackingIn(window)).isEmpty();
            window.press("easing.line.turn");
            window.until("the fall is eased", shown -> window.shows("offer./fall/height"));
            OpenWindow.on(() -> {
                window.program().easing().stop();
                return null;
            });
            window.until("the easing has ended", shown -> shown.easing().stage() != Inquiry.BUSY);
            assertThat(SpokenNames.lackingIn(window)).isEmpty();
            String before = window.state(workspace -> workspace.draft().typed("/fall/height"));
            window.press("offer./fall/height");
            assertThat(window.<String>state(workspace -> workspace.draft().typed("/fall/height")))
                    .isNotEqualTo(before);
            JLabel mark = window.named("easing.mark", JLabel.class);
            assertThat(OpenWindow.<String>on(mark::getText)).isEqualTo(Texts.of("easing.earlier"));
            window.command("command.undo");
            assertThat(window.<String>state(workspace -> workspace.draft().typed("/fall/height")))
                    .isEqualTo(before);
            assertThat(OpenWindow.<Boolean>on(mark::isVisible)).isFalse();
        }
    }

    @Test
    void the_sheet_of_easing_says_what_beats_a_tried_train_and_a_link_chooses_that_one() {
        try (OpenWindow window = opened()) {
            window.command("command.easingsheet");
            JComponent tried = window.named("tried", JComponent.class);
            assertThat(OpenWindow.<Boolean>on(tried::isShowing)).isFalse();
            Train beating = tryOneThatIsBeaten(window);
            assertThat(OpenWindow.<Boolean>on(tried::isShowing)).isTrue();
            assertThat(SpokenNames.lackingIn(window)).isEmpty();
            JComponent strip = window.named("strip", JComponent.class);
            assertThat(OpenWindow.<String>on(() -> strip.getAccessibleContext().getAccessibleDescription()))
                    .startsWith("Beaten by " + beating);
            window.press("tried.better.0");
            assertThat(window.chosen()).isEqualTo(beating);
            assertThat(OpenWindow.<Boolean>on(tried::isShowing)).isFalse();
        }
    }

    /** The first of some tried drums and wheels that a train of the front beats. */
    private static Train tryOneThatIsBeaten(OpenWindow window) {
        StripFigure wheel = StripFigure.of(StripFigure.Kind.WHEEL, new MeshPlace(MeshPlace.Side.BELOW, 1));
        StripFigure drum = StripFigure.of(StripFigure.Kind.DRUM);
        return OpenWindow.on(() -> IntStream.rangeClosed(56, 72)
                .boxed()
                .flatMap(teeth -> IntStream.rangeClosed(12, 24).mapToObj(half -> {
                    window.program().workspace().dropTrial();
                    window.program().workspace().tryCount(wheel, teeth.toString());
                    window.program().workspace().tryCount(drum, 2 * half + " mm");
                    return window.program().tried().standing();
                }))
                .flatMap(Optional::stream)
                .filter(standing -> standing.shortly().startsWith("Beaten"))
                .findFirst()
                .map(standing -> standing.better().get(0).train())
                .orElseThrow());
    }
}
