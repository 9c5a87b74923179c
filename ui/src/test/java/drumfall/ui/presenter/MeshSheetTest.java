// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.quantity.UnitSystem;
import drumfall.ui.presenter.MeshSetting.Dial;
import drumfall.ui.presenter.MeshSetting.Travel;
import drumfall.ui.presenter.MeshSheet.Change;
import drumfall.ui.work.LatestDesk;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MeshSheetTest {
    private final Turns turns = new Turns();
    private final Workspace workspace = turns.workspace(BundledBriefs.demo());
    private MeshSheet sheet;

    @BeforeEach
    void look() {
        sheet = MeshTrains.sheet(turns, workspace);
    }

    private MeshState.Traced traced() {
        turns.until(() -> sheet.state().traced().isPresent());
        return sheet.state().traced().orElseThrow();
    }

    @Test
    void without_a_train_there_is_one_sentence_and_the_next_step() {
        MeshSheet empty = new MeshSheet(turns.workspace(BundledBriefs.demo()), new LatestDesk(turns, "mesh"));
        assertThat(empty.state().sentence())
                .contains("No train is chosen. Choose one in the front to look into its meshes.");
        assertThat(empty.setting()).isEmpty();
        assertThat(empty.phase()).isEmpty();
    }

    @Test
    void at_first_the_centre_wheel_is_looked_into() {
        assertThat(sheet.index()).contains(1);
        assertThat(traced().mesh().mesh()).isEqualTo(MeshTrains.mesh(60, 8, "1.25"));
    }

    @Test
    void the_mesh_looked_into_is_the_same_in_strip_and_sheet() {
        workspace.lookInto(new MeshPlace(MeshPlace.Side.ABOVE, 1));
        assertThat(workspace.highlight().mesh()).contains(0);
        assertThat(sheet.state()).isInstanceOf(MeshState.Tracing.class);
        assertThat(traced().mesh().mesh()).isEqualTo(MeshTrains.mesh(85, 10, "1.5"));
        sheet.lookInto(2);
        assertThat(workspace.strip().highlight().mesh()).contains(2);
    }

    @Test
    void a_mesh_without_printable_teeth_says_so_and_what_to_try() {
        workspace.choose(MeshTrains.toothless());
        sheet.lookInto(2);
        turns.until(() -> sheet.state() instanceof MeshState.Nothing);
        assertThat(sheet.state().sentence())
                .contains("No teeth of 64/8 print and run at a module of 0.3 mm."
                        + " Try a larger module, more leaves or a finer nozzle.");
        assertThat(sheet.state().settable()).isFalse();
    }

    @Test
    void dials_start_in_the_middle_of_the_briefs_bands_and_go_back_there() {
        MeshSetting middle = sheet.setting().orElseThrow();
        assertThat(middle.centreError()).isZero();
        assertThat(middle.thinning()).isCloseTo(75e-6, within(1e-15));
        assertThat(middle.friction()).isCloseTo(0.25, within(1e-15));
        sheet.set(Dial.FRICTION, 0.4);
        assertThat(sheet.isMoved()).isTrue();
        sheet.reset();
        assertThat(sheet.setting()).contains(middle);
        assertThat(traced().contact().friction()).isCloseTo(0.25, within(1e-15));
    }

    @ParameterizedTest
    @EnumSource(Dial.class)
    void a_dial_goes_beyond_its_band_and_no_farther(Dial dial) {
        Travel travel = sheet.travel(dial).orElseThrow();
        assertThat(travel.least()).isLessThan(travel.low());
        assertThat(travel.most()).isGreaterThan(travel.high());
        sheet.set(dial, 10);
        assertThat(sheet.setting().orElseThrow().at(dial)).isEqualTo(travel.most());
        sheet.set(dial, -10);
        assertThat(sheet.setting().orElseThrow().at(dial)).isEqualTo(travel.least());
    }

    @Test
    void friction_turns_the_forces_at_once_on_the_same_path() {
        MeshState.Traced before = traced();
        sheet.set(Dial.FRICTION, 0.5);
        MeshState.Traced after = sheet.state().traced().orElseThrow();
        assertThat(after.mesh().path()).isSameAs(before.mesh().path());
        assertThat(after.contact().worst()).isLessThan(before.contact().worst());
    }

    @Test
    void a_jam_names_what_touches_and_by_how_much() {
        sheet.set(Dial.CENTRE_ERROR, -0.4e-3);
        turns.until(() -> sheet.state().sentence().isPresent());
        double overlap = -1e3 * traced().mesh().backlash();
        assertThat(sheet.state().sentence().orElseThrow())
                .startsWith("Jams: the trailing flanks overlap by ")
                .contains(String.format(java.util.Locale.ROOT, "%.3f mm", overlap));
        workspace.setUnits(UnitSystem.IMPERIAL);
        turns.until(() ->
                sheet.state().sentence().filter(words -> words.contains(" in ")).isPresent());
    }

    @Test
    void a_friction_at_which_a_phase_binds_is_told() {
        MeshState.Traced drawn = traced();
        sheet.set(Dial.CENTRE_ERROR, 0.35e-3);
        turns.until(() -> !traced().mesh().path().equals(drawn.mesh().path()));
        double binds = traced().contact().path().bindingFriction();
        assertThat(binds).isLessThan(0.99);
        sheet.set(Dial.FRICTION, binds - 0.01);
        assertThat(sheet.state().sentence()).isEmpty();
        sheet.set(Dial.FRICTION, binds + 0.01);
        assertThat(sheet.state().sentence().orElseThrow()).startsWith("Binds: ");
    }

    @Test
    void nothing_moves_until_the_maker_sets_it_turning() {
        sheet.turnTo(0.25);
        sheet.pass(1);
        assertThat(sheet.turn()).isEqualTo(0.25);
        sheet.setTurning(true);
        sheet.pass(1);
        assertThat(sheet.turn()).isGreaterThan(0.25);
        double stopped = sheet.turn();
        sheet.setTurning(false);
        sheet.pass(1);
        assertThat(sheet.turn()).isEqualTo(stopped);
    }

    @Test
    void turning_on_past_the_end_of_the_pitch_begins_the_next_one() {
        sheet.turnTo(0.9);
        sheet.turnBy(0.2);
        assertThat(sheet.turn()).isCloseTo(0.1, within(1e-12));
        sheet.turnBy(-0.2);
        assertThat(sheet.turn()).isCloseTo(0.9, within(1e-12));
    }

    @Test
    void a_turn_is_told_as_a_phase_and_a_dial_as_a_state() {
        List<Change> told = new ArrayList<>();
        sheet.listen(told::add);
        sheet.turnBy(0.1);
        sheet.set(Dial.FRICTION, 0.3);
        sheet.setTurning(true);
        assertThat(told).containsExactly(Change.PHASE, Change.STATE, Change.TURNING);
    }

    @ParameterizedTest
    @EnumSource(MeshFigure.class)
    void every_figure_says_where_it_comes_from(MeshFigure figure) {
        WhereCard card = figure.card(traced(), sheet.setting().orElseThrow(), UnitSystem.METRIC);
        assertThat(card.title()).isNotBlank();
        assertThat(card.value()).isEqualTo(figure.value(traced(), UnitSystem.METRIC));
        assertThat(card.formula()).isNotBlank();
        assertThat(card.source()).isNotBlank();
        assertThat(card.inputs()).allSatisfy(input -> assertThat(input.value()).isNotBlank());
    }
}
