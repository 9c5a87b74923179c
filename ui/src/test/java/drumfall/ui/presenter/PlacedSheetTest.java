// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.TextNode;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.brief.MeshLock;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.check.LayoutCheck;
import drumfall.solver.quantity.UnitSystem;
import drumfall.ui.design.BriefDraft;
import drumfall.ui.presenter.StripFigure.Kind;
import drumfall.ui.work.LatestDesk;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PlacedSheetTest {
    private static final int ESCAPE = 4;
    private final Turns turns = new Turns();
    private final Workspace workspace = turns.workspace(BundledBriefs.demo());

    private PlacedSheet sheet() {
        return PlacedTrains.sheet(turns, workspace);
    }

    private static Layout layout(PlacedSheet sheet) {
        return sheet.seen().orElseThrow().layout();
    }

    @Test
    void without_a_train_the_next_step_is_to_choose_one() {
        PlacedSheet sheet = new PlacedSheet(
                workspace, (brief, train) -> Optional.of(PlacedTrains.need()), new LatestDesk(turns, "layout"));
        assertThat(sheet.state().sentence())
                .contains("No train is chosen. Choose one in the front to see where its arbors stand.");
        assertThat(sheet.seen()).isEmpty();
    }

    @Test
    void a_chosen_train_is_placed_after_it_was_busy() {
        PlacedSheet sheet = new PlacedSheet(
                workspace, (brief, train) -> Optional.of(PlacedTrains.need()), new LatestDesk(turns, "layout"));
        workspace.choose(PlacedTrains.train());
        assertThat(sheet.state().busy()).isTrue();
        turns.until(() -> !sheet.state().busy());
        assertThat(LayoutCheck.faults(layout(sheet))).isEmpty();
        // The brief does not say where the bob swings, and the weight of this train falls past it.
        assertThat(sheet.state().sentence().orElseThrow())
                .startsWith("The weight may meet the swinging bob unless the middle of the bob is ")
                .endsWith(" the brief does not say where it swings.");
    }

    @Test
    void a_frame_too_small_is_told_with_what_lacks_and_the_next_step() {
        PlacedSheet sheet = new PlacedSheet(
                workspace, (brief, train) -> Optional.of(PlacedTrains.need(90, 420)), new LatestDesk(turns, "layout"));
        workspace.choose(PlacedTrains.train());
        turns.until(() -> !sheet.state().busy());
        assertThat(sheet.state().sentence().orElseThrow())
                .startsWith("No layout ")
                .contains("Closest: ")
                .contains(" mm")
                .endsWith("Make the frame larger, let drawn arbors go, or choose another train.");
        assertThat(sheet.seen()).isEmpty();
    }

    @Test
    void the_least_weight_of_the_placed_train_stands_beside_the_unplaced_one() {
        PlacedSheet sheet = sheet();
        PlacedLeast least = sheet.least().orElseThrow();
        assertThat(least.least()).isPositive().isLessThanOrEqualTo(least.unplaced());
        assertThat(least.unplaced())
                .isEqualTo(workspace.chosen().orElseThrow().weight().leastWeight());
        WhereCard card = least.card(workspace.units());
        assertThat(card.value()).isEqualTo(least.value(workspace.units()));
        assertThat(card.inputs())
                .hasSize(2)
                .allSatisfy(input -> assertThat(input.card()).isPresent());
    }

    @Test
    void how_far_the_weight_keeps_from_the_bob_stands_on_its_card() {
        PlacedBob bob = sheet().bob().orElseThrow();
        WhereCard card = bob.card(workspace.units());
        assertThat(card.value()).isEqualTo(bob.value(workspace.units()));
        assertThat(card.inputs())
                .hasSizeBetween(2, 3)
                .allSatisfy(input -> assertThat(input.card()).isPresent());
        assertThat(bob.words()).isEqualTo(sheet().state().sentence());
    }

    @Test
    void a_fault_of_the_need_is_told_and_closes_nothing() {
        PlacedSheet sheet = new PlacedSheet(
                workspace,
                (brief, train) -> {
                    throw new IllegalStateException("no sizes");
                },
                new LatestDesk(turns, "layout"));
        workspace.choose(PlacedTrains.train());
        turns.until(() -> !sheet.state().busy());
        assertThat(sheet.state().sentence()).contains("The arbors could not be placed; the details are in the log.");
    }

    @Test
    void placing_that_is_stopped_says_so_and_can_be_done_again() {
        PlacedSheet[] sheet = new PlacedSheet[1];
        boolean[] stopAtOnce = {true};
        sheet[0] = new PlacedSheet(
                workspace,
                (brief, train) -> {
                    if (stopAtOnce[0]) {
                        sheet[0].stop();
                    }
                    return Optional.of(PlacedTrains.need());
                },
                new LatestDesk(turns, "layout"));
        workspace.choose(PlacedTrains.train());
        turns.until(() -> !sheet[0].state().busy());
        assertThat(sheet[0].state().sentence())
                .hasValueSatisfying(words -> assertThat(words).startsWith("Placing was stopped"));
        stopAtOnce[0] = false;
        sheet[0].placeAgain();
        turns.until(() -> !sheet[0].state().busy());
        assertThat(sheet[0].seen()).isPresent();
    }

    @Test
    void an_arbor_let_go_stays_where_it_was_drawn_and_undoing_takes_it_back() {
        PlacedSheet sheet = sheet();
        Layout before = layout(sheet);
        sheet.drawTo(ESCAPE, before.place(ESCAPE).plus(new Place(4 * PlacedTrains.MM, 0)));
        Place drawn = sheet.drag().orElseThrow().drag().place();
        sheet.letGo();
        assertThat(sheet.state().busy()).isTrue();
        assertThat(sheet.seen()).as("the last layout stays").isPresent();
        turns.until(() -> !sheet.state().busy());
        assertThat(LayoutCheck.faults(layout(sheet))).isEmpty();
        // one nanometre each way for every arbor on the way from the dial centre
        assertThat(layout(sheet).place(ESCAPE).distance(drawn)).isLessThan(4.0);
        assertThat(workspace.undoName()).contains("draw the escape arbor");
        assertThat(sheet.locked()).isTrue();
        workspace.undo();
        turns.until(() -> !sheet.state().busy());
        assertThat(layout(sheet).places()).isEqualTo(before.places());
        assertThat(sheet.locked()).isFalse();
        workspace.redo();
        turns.until(() -> !sheet.state().busy());
        assertThat(layout(sheet).place(ESCAPE).distance(drawn)).isLessThan(4.0);
    }

    @Test
    void an_arbor_on_its_way_carries_what_it_drives_and_names_what_clashes() {
        PlacedSheet sheet = sheet();
        Layout before = layout(sheet);
        sheet.drawTo(3, new Place(-before.place(3).x(), -before.place(3).y()));
        PlacedDrag drag = sheet.drag().orElseThrow();
        Place step = drag.drag().place().minus(before.place(3));
        for (int arbor = 0; arbor < before.places().size(); arbor++) {
            boolean follows = arbor >= 3 && arbor <= 5;
            assertThat(layout(sheet).place(arbor))
                    .isEqualTo(follows ? before.place(arbor).plus(step) : before.place(arbor));
        }
        assertThat(drag.faults()).isEqualTo(LayoutCheck.faults(drag.carried()));
        assertThat(drag.faults()).isNotEmpty();
    }

    @Test
    void the_holes_of_the_plates_are_kept_in_one_step_that_can_be_undone() {
        PlacedSheet sheet = sheet();
        BriefDraft before = workspace.draft();
        assertThat(sheet.canKeepHoles()).isTrue();

        sheet.keepHoles();

        assertThat(workspace.undoName()).contains("keeping the holes of the plates");
        assertThat(workspace.draft().problems()).isEmpty();
        // Four meshes of the train, m (z + p) / 2 by hand.
        assertThat(workspace.draft().locks().meshes())
                .extracting(lock -> lock.distance().orElseThrow().text())
                .containsExactly("61.5 mm", "43.75 mm", "37 mm", "34 mm");
        assertThat(LockEdits.held(workspace.draft().locks()))
                .extracting(StripFigure::kind)
                .contains(
                        Kind.DIRECTION,
                        Kind.MOTION_DIRECTION,
                        Kind.MOTION_DISTANCE,
                        Kind.PALLET_DISTANCE,
                        Kind.MESHES_ABOVE,
                        Kind.MESHES_BELOW)
                .doesNotContain(Kind.WHEEL, Kind.LEAVES, Kind.MODULE, Kind.ESCAPE_TEETH, Kind.DRUM, Kind.FALLS);
        assertThat(workspace.draft().typed("/frame/dialFromLeft")).isEqualTo("150 mm");

        workspace.undo();
        assertThat(workspace.draft()).isEqualTo(before);
    }

    @Test
    void arbors_drawn_by_hand_are_kept_where_they_were_drawn_and_are_the_briefs_then() {
        PlacedSheet sheet = sheet();
        Layout before = layout(sheet);
        sheet.drawTo(ESCAPE, before.place(ESCAPE).plus(new Place(9 * PlacedTrains.MM, 0)));
        sheet.letGo();
        turns.until(() -> !sheet.state().busy());
        Layout drawn = layout(sheet);

        sheet.keepHoles();

        MeshLock last = workspace.draft().locks().meshes().get(3);
        Place step = drawn.place(ESCAPE).minus(drawn.place(3));
        assertThat(Place.polar(
                        34 * PlacedTrains.MM, last.direction().orElseThrow().si()))
                .isEqualTo(step);
        assertThat(sheet.locked()).isFalse();
    }

    @Test
    void each_hole_can_be_let_go_by_itself() {
        PlacedSheet sheet = sheet();
        sheet.keepHoles();
        List<StripFigure> held = LockEdits.held(workspace.draft().locks());

        for (StripFigure figure : held) {
            assertThat(LockEdits.heldValue(workspace.draft().locks(), figure)).isPresent();
            workspace.toggleLock(figure);
            assertThat(LockEdits.holds(workspace.draft().locks(), figure)).isFalse();
        }

        assertThat(held).hasSize(13);
        assertThat(workspace.draft().locks()).isEqualTo(drumfall.solver.brief.Locks.NONE);
    }

    @Test
    void no_holes_are_kept_while_another_train_is_tried_or_arbors_are_left_unplaced() {
        PlacedSheet sheet = sheet();
        workspace.tryCount(StripFigure.of(Kind.ESCAPE_TEETH), "27");
        assertThat(sheet.canKeepHoles()).isFalse();
        workspace.dropTrial();
        assertThat(sheet.canKeepHoles()).isTrue();

        workspace.edit(
                "unplaced",
                workspace.draft().with("/frame/arrangement", TextNode.valueOf("unplaced")),
                Optional.empty());
        turns.until(() -> !sheet.state().busy());
        assertThat(sheet.canKeepHoles()).isFalse();
        sheet.keepHoles();
        assertThat(workspace.undoName()).contains("unplaced");
    }

    @Test
    void giving_up_changes_nothing() {
        PlacedSheet sheet = sheet();
        Layout before = layout(sheet);
        sheet.drawTo(ESCAPE, new Place(0, 0));
        assertThat(layout(sheet)).isNotEqualTo(before);
        sheet.giveUp();
        assertThat(layout(sheet)).isEqualTo(before);
        assertThat(workspace.undoName()).contains("choice of a train");
    }

    /** The centre arbor is the dial centre, the pallet arbor follows the escape arbor. */
    @ParameterizedTest
    @CsvSource({"2", "5"})
    void an_arbor_that_cannot_be_drawn_stays(int arbor) {
        PlacedSheet sheet = sheet();
        sheet.drawTo(arbor, new Place(10, 10));
        assertThat(sheet.drag()).isEmpty();
    }

    @Test
    void keys_move_the_selected_arbor_along_its_arc() {
        PlacedSheet sheet = sheet();
        Layout before = layout(sheet);
        sheet.select(Optional.of(6));
        sheet.nudge(1, 0, 0.02);
        Place at = sheet.drag().orElseThrow().drag().place();
        assertThat(at.x()).isGreaterThan(before.place(6).x());
        double turned = before.place(2).directionTo(at) - before.place(2).directionTo(before.place(6));
        // a nanometre on a radius of 24 mm
        assertThat(Math.abs(Math.IEEEremainder(turned, 2 * Math.PI))).isCloseTo(0.02, within(1e-7));
    }

    @Test
    void an_arbor_pointed_at_is_pointed_at_everywhere_and_selecting_it_looks_into_its_mesh() {
        PlacedSheet sheet = sheet();
        sheet.point(Optional.of(3));
        assertThat(workspace.highlight().arbor()).contains(3);
        sheet.select(Optional.of(1));
        assertThat(workspace.highlight().mesh()).contains(1);
        sheet.point(Optional.of(6));
        assertThat(workspace.highlight().arbor())
                .as("no other place knows the minute arbor")
                .isEmpty();
        assertThat(sheet.pointed()).contains(6);
    }

    @Test
    void the_train_stands_until_it_is_set_turning() {
        PlacedSheet sheet = sheet();
        sheet.pass(9);
        assertThat(sheet.turn()).isZero();
        sheet.setTurning(true);
        sheet.pass(9);
        assertThat(sheet.turn()).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void an_overlap_is_named_with_both_parts_and_its_amount() {
        PlacedWords words = new PlacedWords(PlacedTrains.need().parts(), UnitSystem.METRIC);
        Part wheel = new Part(PartKind.WHEEL, 1);
        Part rod = new Part(PartKind.ROD, 3);
        assertThat(words.fault(new Shortfall(Rule.RADIAL_GAP, wheel, Optional.of(rod), 1_000_000, -1_250_000)))
                .isEqualTo("wheel of arbor 2 overlaps rod of arbor 4 by 1.25 mm");
        assertThat(words.fault(new Shortfall(Rule.RADIAL_GAP, wheel, Optional.of(rod), 1_000_000, 400_000)))
                .isEqualTo("wheel of arbor 2 and rod of arbor 4 are 0.6 mm too close");
    }

    @ParameterizedTest
    @EnumSource(Rule.class)
    void every_rule_has_its_words(Rule rule) {
        PlacedWords words = new PlacedWords(PlacedTrains.need().parts(), UnitSystem.METRIC);
        assertThat(words.fault(Shortfall.of(rule, new Part(PartKind.PALLETS, 5), 2_000_000, 0)))
                .contains("pallets of arbor 6", "2 mm");
        assertThat(List.of(PartKind.values()))
                .allSatisfy(kind -> assertThat(words.part(new Part(kind, 0))).isNotBlank());
    }
}
