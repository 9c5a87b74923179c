// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.train.Train;
import drumfall.ui.design.Design;
import drumfall.ui.plugin.PluginFolder;
import drumfall.ui.plugin.PluginJars;
import drumfall.ui.presenter.FrontView;
import drumfall.ui.presenter.Inquiry;
import drumfall.ui.presenter.SmallBriefs;
import drumfall.ui.presenter.StripFigure;
import drumfall.ui.presenter.StripFigure.Kind;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.look.Look;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@NeedsDisplay
class WindowTest {
    @TempDir
    Path home;

    private static StripFigure wheel(int below) {
        return StripFigure.of(Kind.WHEEL, new MeshPlace(MeshPlace.Side.BELOW, below));
    }

    private OpenWindow opened() {
        OpenWindow window = new OpenWindow(SmallBriefs.small(), home, plugins());
        window.untilSolved();
        return window;
    }

    private List<PluginFolder> plugins() {
        return List.of(new PluginFolder(PluginFolder.Origin.USER, home.resolve("plugins")));
    }

    @Test
    void the_whole_job_goes_from_brief_to_saved_design_and_back() {
        try (OpenWindow window = opened()) {
            JTable table = window.named("front.table", JTable.class);
            int trains = window.front().ratings().size();
            assertThat(OpenWindow.<Integer>on(table::getRowCount)).isEqualTo(trains);
            OpenWindow.on(() -> {
                table.setRowSelectionInterval(3, 3);
                return null;
            });
            Train third = window.chosen();
            assertThat(third).isEqualTo(window.front().ratings().get(3).train());
            holdTwoWheels(window);
            assertThat(window.front().ratings()).isNotEmpty().hasSizeLessThan(trains);
            Design held = window.state(workspace -> workspace.design());
            window.command("command.undo");
            window.command("command.undo");
            window.untilSolved();
            assertThat(window.front().ratings()).hasSize(trains);
            window.command("command.redo");
            window.command("command.redo");
            assertThat(window.<Design>state(workspace -> workspace.design())).isEqualTo(held);
            saveAndReopen(window, held);
            lightAndDark(window);
        }
    }

    private static void holdTwoWheels(OpenWindow window) {
        OpenWindow.on(() -> {
            window.program().workspace().toggleLock(wheel(1));
            window.program().workspace().toggleLock(wheel(2));
            return null;
        });
        window.untilSolved();
    }

    private void saveAndReopen(OpenWindow window, Design design) {
        window.answering(home.resolve("clock.drumfall"));
        window.command("command.saveas");
        window.until("the design is saved", shown -> shown.files().file().isPresent());
        assertThat(OpenWindow.on(() -> window.program().window().getTitle())).isEqualTo("Small wall clock — Drumfall");
        window.command("new.desk-clock");
        assertThat(window.<String>state(workspace -> workspace.design().name())).isEqualTo("Tansy desk clock");
        window.command("command.open");
        window.until(
                "the design is open again", shown -> shown.workspace().design().equals(design));
        window.untilSolved();
        assertThat(window.chosen()).isEqualTo(design.chosen().orElseThrow());
    }

    private static void lightAndDark(OpenWindow window) {
        boolean before = OpenWindow.on(Look::dark);
        window.command("command.dark");
        assertThat(OpenWindow.<Boolean>on(Look::dark)).isEqualTo(!before);
        window.command("command.dark");
        assertThat(OpenWindow.<Boolean>on(Look::dark)).isEqualTo(before);
    }

    @Test
    void four_places_stand_side_by_side_at_the_smallest_usual_screen() {
        try (OpenWindow window = opened()) {
            OpenWindow.on(() -> {
                window.program().window().setSize(new Dimension(1440, 900));
                window.program().window().validate();
                return null;
            });
            for (String place : List.of("brief", "front", "drawing.place", "strip.place")) {
                JComponent shown = window.named(place, JComponent.class);
                assertThat(OpenWindow.<Boolean>on(shown::isShowing)).as(place).isTrue();
                Dimension size = OpenWindow.on(shown::getSize);
                assertThat(size.width).as(place).isGreaterThan(250);
                assertThat(size.height).as(place).isGreaterThan(150);
            }
        }
    }

    @Test
    void everything_that_takes_the_keyboard_has_a_name_to_be_read() {
        try (OpenWindow window = opened()) {
            assertThat(SpokenNames.lackingIn(window)).isEmpty();
        }
    }

    @Test
    void one_key_goes_round_the_places() {
        try (OpenWindow window = opened()) {
            OpenWindow.on(() -> window.program().window().requestFocusInWindow());
            List<String> seen = new java.util.ArrayList<>();
            for (int i = 0; i < 4; i++) {
                window.command("command.nextplace");
                seen.add(OpenWindow.on(() -> placeOfFocus(window)));
            }
            assertThat(seen).containsExactlyInAnyOrder("brief", "front", "drawing.place", "strip.place");
        }
    }

    private static String placeOfFocus(OpenWindow window) {
        Component owner = window.program().window().getMostRecentFocusOwner();
        for (Component at = owner; at != null; at = at.getParent()) {
            if (List.of("brief", "front", "drawing.place", "strip.place").contains(String.valueOf(at.getName()))) {
                return at.getName();
            }
        }
        return String.valueOf(owner);
    }

    @Test
    void a_wrong_unit_is_told_beside_its_entry_and_nothing_is_lost() {
        try (OpenWindow window = opened()) {
            Train before = window.chosen();
            window.type("/weight/limit", "9 furlongs");
            assertThat(window.<Integer>state(
                            workspace -> workspace.draft().problems().size()))
                    .isEqualTo(1);
            assertThat(window.<Boolean>state(workspace -> workspace.frontIsEarlier()))
                    .isTrue();
            assertThat(window.chosen()).isEqualTo(before);
            assertThat(OpenWindow.on(window.named("search.doing", JLabel.class)::getText))
                    .isEqualTo(Texts.of("search.waiting"));
            JTextArea told = OpenWindow.on(() -> window.shown()
                    .filter(JTextArea.class::isInstance)
                    .map(JTextArea.class::cast)
                    .filter(text -> text.getText().contains("furlongs"))
                    .findFirst()
                    .orElseThrow());
            assertThat(OpenWindow.on(told::getVisibleRect).getSize()).isEqualTo(OpenWindow.on(told::getSize));
            window.type("/weight/limit", "12 kg");
            window.untilSolved();
            assertThat(window.<Boolean>state(workspace -> workspace.frontIsEarlier()))
                    .isFalse();
        }
    }

    @Test
    void demands_that_clash_lead_back_into_the_brief() {
        try (OpenWindow window = opened()) {
            window.type("/weight/limit", "100 g");
            window.untilSolved();
            FrontView view = window.state(FrontView::of);
            assertThat(view.body()).isEqualTo(FrontView.Body.NO_TRAIN);
            JLabel sentence = window.named("front.sentence", JLabel.class);
            assertThat(OpenWindow.<Boolean>on(sentence::isShowing)).isTrue();
            assertThat(OpenWindow.on(sentence::getText)).isEqualTo(view.sentence());
        }
    }

    @Test
    void why_there_is_no_train_is_explained_in_full_on_the_spot_and_an_offer_ends_it() {
        try (OpenWindow window = opened()) {
            window.type("/weight/limit", "1 kg");
            window.untilSolved();
            JComponent line = window.named("reasons.line.turn", JComponent.class);
            assertThat(OpenWindow.<Boolean>on(line::isShowing)).isTrue();
            window.command("command.explain");
            window.until(
                    "all is explained",
                    shown -> shown.explainer().view().orElseThrow().stage() == Inquiry.DONE);
            assertThat(SpokenNames.lackingIn(window)).isEmpty();
            JComponent limit = window.named("clash./weight/limit", JComponent.class);
            assertThat(OpenWindow.<Boolean>on(limit::isShowing)).isTrue();
            window.press("offer./weight/limit");
            window.untilSolved();
            assertThat(window.front().ratings()).isNotEmpty();
            window.command("command.undo");
            assertThat(window.<String>state(workspace -> workspace.draft().typed("/weight/limit")))
                    .isEqualTo("1 kg");
        }
    }

    @Test
    void a_running_search_is_shown_and_can_be_stopped() {
        try (OpenWindow window = new OpenWindow(SmallBriefs.small(), home, plugins(), (brief, listener, cancelled) -> {
            while (!cancelled.getAsBoolean()) {
                Thread.onSpinWait();
            }
            return new SearchOutcome.Stopped(List.of());
        })) {
            JComponent stop = window.named("search.stop", JComponent.class);
            assertThat(OpenWindow.<Boolean>on(stop::isShowing)).isTrue();
            window.command("command.stop");
            window.untilSolved();
            assertThat(OpenWindow.<Boolean>on(stop::isShowing)).isFalse();
        }
    }

    @Test
    void esc_stops_an_explanation_and_says_that_it_was_stopped() {
        try (OpenWindow window = opened()) {
            window.type("/weight/limit", "1 kg");
            window.untilSolved();
            OpenWindow.on(() -> {
                window.program().explainer().explain();
                window.pressKey(KeyEvent.VK_ESCAPE);
                return null;
            });
            window.until(
                    "the explanation has ended", shown -> !shown.explainer().busy());
            assertThat(OpenWindow.on(() ->
                            window.program().explainer().view().orElseThrow().stage()))
                    .isEqualTo(Inquiry.STOPPED);
            assertThat(OpenWindow.<Boolean>on(() -> window.program().explainer().canExplain()))
                    .isTrue();
        }
    }

    @Test
    void a_figure_says_where_it_comes_from_and_the_card_goes_away_again() {
        try (OpenWindow window = opened()) {
            window.press("figure.DURATION");
            JComponent card = OpenWindow.on(() ->
                    (JComponent) OpenWindow.all(window.program().window().getLayeredPane())
                            .filter(component -> "where".equals(component.getName()))
                            .findFirst()
                            .orElseThrow());
            assertThat(OpenWindow.<Boolean>on(card::isShowing)).isTrue();
            OpenWindow.on(() -> {
                card.getActionMap().get("close").actionPerformed(null);
                return null;
            });
            assertThat(OpenWindow.<Boolean>on(card::isShowing)).isFalse();
        }
    }

    @Test
    void a_tried_count_is_taken_or_dropped_from_the_menu() {
        try (OpenWindow window = opened()) {
            OpenWindow.on(() -> {
                window.program().workspace().tryCount(wheel(1), "70");
                return null;
            });
            window.command("command.accept");
            assertThat(window.chosen().below().get(0).toothCount()).isEqualTo(70);
            window.command("command.undo");
            assertThat(window.chosen().below().get(0).toothCount()).isNotEqualTo(70);
        }
    }

    @Test
    void the_window_opens_where_and_as_it_was_closed() {
        try (OpenWindow window = opened()) {
            window.command("command.inches");
            OpenWindow.on(() -> {
                window.program().window().setBounds(40, 30, 1300, 820);
                return null;
            });
            window.command("command.quit");
        }
        try (OpenWindow again = new OpenWindow(SmallBriefs.small(), home, plugins())) {
            again.untilSolved();
            assertThat(OpenWindow.on(() -> again.program().window().getSize())).isEqualTo(new Dimension(1300, 820));
            assertThat(again.<Object>state(workspace -> workspace.units()))
                    .isEqualTo(drumfall.solver.quantity.UnitSystem.IMPERIAL);
        }
    }

    @Test
    void a_larger_size_enlarges_the_letters_at_once() {
        try (OpenWindow window = opened()) {
            JTable table = window.named("front.table", JTable.class);
            float before = OpenWindow.on(() -> table.getFont().getSize2D());
            window.command("command.larger");
            assertThat(OpenWindow.on(() -> table.getFont().getSize2D())).isGreaterThan(before);
            window.command("command.usual");
            assertThat(OpenWindow.on(() -> table.getFont().getSize2D())).isEqualTo(before);
        }
    }

    @Test
    void at_a_larger_size_no_place_covers_another_and_the_strip_has_the_height_it_needs() {
        try (OpenWindow window = opened()) {
            window.command("command.larger", 6);
            for (String place : List.of("brief", "front", "drawing.place", "strip.place")) {
                JComponent shown = window.named(place, JComponent.class);
                Dimension least = OpenWindow.on(shown::getMinimumSize);
                Dimension size = OpenWindow.on(shown::getSize);
                assertThat(size.height).as(place).isGreaterThanOrEqualTo(least.height);
            }
            JComponent brief = window.named("brief", JComponent.class);
            assertThat(OpenWindow.<Boolean>on(() -> brief.getWidth() >= brief.getMinimumSize().width))
                    .isTrue();
            window.command("command.smaller");
            window.command("command.usual");
        }
    }

    @Test
    void scatter_and_table_have_one_selection() {
        try (OpenWindow window = opened()) {
            JComponent scatter = window.named("front.scatter", JComponent.class);
            JTable table = window.named("front.table", JTable.class);
            OpenWindow.on(() -> {
                scatter.getActionMap().get("RIGHT").actionPerformed(null);
                return null;
            });
            Train chosen = window.chosen();
            int row = OpenWindow.on(table::getSelectedRow);
            int index = OpenWindow.on(() -> table.convertRowIndexToModel(row));
            assertThat(window.front().ratings().get(index).train()).isEqualTo(chosen);
        }
    }

    @Test
    void the_chosen_train_goes_out_through_a_jar_unknown_before_and_a_broken_one_leaves_all_whole() throws IOException {
        Files.createDirectories(home.resolve("plugins"));
        PluginJars.in(home)
                .exporter("Line", "line", "write(folder, \"train.txt\", handover.rating().train().toString());")
                .exporter("Broken", "broken", """
                        write(folder, "half.txt", "half");
                        if (!Boolean.getBoolean("drumfall.test.mended")) { throw new IllegalStateException("on purpose"); }
                        """)
                .jar(home.resolve("plugins").resolve("stranger.jar"));
        try (OpenWindow window = opened()) {
            window.until("plugins are loaded", shown -> shown.exports().loaded());
            window.answering(home.resolve("exports"));
            window.openMenu("menu.export");
            window.command("export.line");
            window.until(
                    "the train is written",
                    shown -> shown.workspace().news().text().contains("line title wrote"));
            assertThat(home.resolve("exports/line/train.txt"))
                    .hasContent(window.chosen().toString());
            Design before = window.state(workspace -> workspace.design());
            window.command("export.broken");
            window.until("the fault is told", shown -> shown.workspace().news().trouble());
            assertThat(window.<String>state(workspace -> workspace.news().text()))
                    .contains("stranger.jar");
            assertThat(window.<Design>state(workspace -> workspace.design())).isEqualTo(before);
            assertThat(home.resolve("exports/line/train.txt")).exists();
            exportAll(window);
        }
    }

    @Test
    void exporters_are_ticked_and_set_on_a_page_and_it_is_remembered() throws IOException {
        Files.createDirectories(home.resolve("plugins"));
        PluginJars.in(home)
                .settable(
                        "Copies",
                        "copies",
                        """
                        static final ExportSetting.Count COPIES =
                                new ExportSetting.Count("copies", "Copies", "How many.", 1, 1, 9);
                        public java.util.List<ExportSetting<?>> settings() { return java.util.List.of(COPIES); }
                        """,
                        "write(folder, \"copies.txt\", \"\" + handover.settings().of(COPIES));")
                .exporter("Line", "line", "write(folder, \"train.txt\", \"line\");")
                .jar(home.resolve("plugins").resolve("stranger.jar"));
        try (OpenWindow window = opened()) {
            window.until("plugins are loaded", shown -> shown.exports().loaded());
            window.command("command.exportpage");
            window.answering(home.resolve("exports"));
            window.press("export.tick.line");
            window.type("export.set.copies.copies", "10");
            assertThat(window.named("export.into.folder", JButton.class).isEnabled())
                    .isFalse();
            window.type("export.set.copies.copies", "3");
            assertThat(SpokenNames.lackingIn(window)).isEmpty();
            window.press("export.into.folder");
            window.until(
                    "what is ticked is written",
                    shown -> shown.workspace().news().text().contains("The ticked exporters together wrote 1 files"));
            assertThat(home.resolve("exports/all_exports/copies/copies.txt")).hasContent("3");
            window.openMenu("menu.export");
            window.command("export.copies");
            window.until(
                    "the set exporter writes alone",
                    shown -> shown.workspace().news().text().contains("copies title wrote"));
            assertThat(home.resolve("exports/copies/copies.txt")).hasContent("3");
        }
        try (OpenWindow window = opened()) {
            window.until("plugins are loaded", shown -> shown.exports().loaded());
            window.command("command.exportpage");
            assertThat(window.named("export.tick.line", JCheckBox.class).isSelected())
                    .isFalse();
            assertThat(window.named("export.set.copies.copies", JTextField.class)
                            .getText())
                    .isEqualTo("3");
            window.press("export.back.copies.copies");
            assertThat(window.named("export.set.copies.copies", JTextField.class)
                            .getText())
                    .isEqualTo("1");
            assertThat(window.named("export.back.copies.copies", JButton.class).isEnabled())
                    .isFalse();
        }
    }

    /** Nothing of it while one is broken, all of it once that is mended. */
    private void exportAll(OpenWindow window) {
        window.command("exportall.all");
        window.until(
                "the fault is told again", shown -> shown.workspace().news().trouble());
        assertThat(home.resolve("exports/all_exports")).doesNotExist();
        window.answering(home.resolve("clock.zip"));
        try {
            System.setProperty("drumfall.test.mended", "true");
            window.command("exportall.zip");
            window.until(
                    "all is written",
                    shown -> shown.workspace().news().text().contains("All exporters together wrote 2 files"));
        } finally {
            System.clearProperty("drumfall.test.mended");
        }
        assertThat(home.resolve("clock.zip")).isRegularFile();
    }
}
