// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.check.LayoutCheck;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.KeptHoles;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Drilled plates are kept: every train found on them has its arbors in the holes that there are. */
class KeptHolesTest {
    private static final String FEW =
            "/train = {\"above\": {\"from\": 1, \"to\": 1}, \"below\": {\"from\": 2, \"to\": 2}}"
                    + " & /teeth/wheelTeeth = {\"from\": 74, \"to\": 77} & /teeth/leaves = {\"from\": 8, \"to\": 9}"
                    + " & /drum/diameter = {\"from\": \"34 mm\", \"to\": \"36 mm\", \"step\": \"2 mm\"} & /line/falls = [1]"
                    + " & /teeth/modules = [\"1 mm\", \"1.25 mm\"] & /escapement/teeth = {\"from\": 27, \"to\": 30, \"step\": 3}"
                    + " & /run = {\"atLeast\": \"1 d\", \"wanted\": \"8 d\", \"atMost\": \"20 d\"} & /weight/limit = \"60 kg\""
                    + " & /beat = {\"beatsPerHour\": {\"from\": \"3000\", \"to\": \"6000\"}, \"secondsHand\": false}"
                    + " & /line/ratedLoad = \"20000 N\" & /material/allowable = \"200 MPa\"";

    private static final String KEPT = "75/9 m1.25 | 75/9 m1 · 74/9 m1 · E30";

    private static final Brief BRIEF = Briefs.demoWith(FEW);
    private static final Train TRAIN = Trains.of(KEPT, "36", 1);
    private static final Layout LAYOUT =
            TrainPlacing.layout(BRIEF, TRAIN, () -> false).orElseThrow();
    private static final Brief HELD = KeptHoles.of(BRIEF, TRAIN, LAYOUT);

    /** Nanometres that arbors may stand off a hole: a micrometre, to which a layout is checked. */
    private static final double HOLE = 1_000;

    private static List<Rating> front(Brief brief) {
        return TrainSearch.run(brief, SearchListener.SILENT, () -> false).front();
    }

    /** Everything bored into the plates, and the corner of the frame, from which pillars and edges are measured. */
    private static List<Place> holes(Brief brief, Train train) {
        Layout layout = TrainPlacing.layout(brief, train, () -> false).orElseThrow();
        assertThat(LayoutCheck.faults(layout)).isEmpty();
        return IntStream.concat(IntStream.range(0, layout.places().size()), IntStream.of(-1))
                .mapToObj(i -> i < 0 ? layout.frameCorner() : layout.place(i))
                .toList();
    }

    /** Upright places are on one line; compact and symmetric ones are not. */
    @ParameterizedTest
    @ValueSource(strings = {"upright", "compact", "symmetric"})
    void every_train_found_stands_in_the_holes_of_the_kept_one(String arrangement) {
        Brief brief = Briefs.with(BRIEF, "/frame/arrangement = \"" + arrangement + "\"");
        List<Place> kept = holes(brief, TRAIN);
        Brief held = KeptHoles.of(
                brief, TRAIN, TrainPlacing.layout(brief, TRAIN, () -> false).orElseThrow());

        List<Rating> found = front(held);

        // Drum, centre, third and escape arbor, pallets, minute arbor, corner.
        assertThat(kept).hasSize(7);
        assertThat(found).extracting(Rating::train).anyMatch(train -> !train.equals(TRAIN));
        assertThat(found).allSatisfy(rating -> {
            List<Place> holes = holes(held, rating.train());
            assertThat(holes).hasSameSizeAs(kept);
            for (int i = 0; i < kept.size(); i++) {
                assertThat(holes.get(i).distance(kept.get(i))).isLessThanOrEqualTo(HOLE);
            }
        });
    }

    @Test
    void directions_drawn_by_hand_are_held_to_the_nanometre() {
        Brief drawn = Briefs.with(
                BRIEF,
                "/locks/meshes = [{\"place\": {\"side\": \"below\", \"number\": 1}, \"direction\": \"77.3 deg\"},"
                        + " {\"place\": {\"side\": \"above\", \"number\": 1}, \"direction\": \"1.5234567 rad\"}]");
        Layout layout = TrainPlacing.layout(drawn, TRAIN, () -> false).orElseThrow();

        Brief held = KeptHoles.of(BRIEF, TRAIN, layout);

        assertThat(holes(held, TRAIN)).isEqualTo(holes(drawn, TRAIN)).isNotEqualTo(holes(BRIEF, TRAIN));
        assertThat(held.locks().meshes().get(1).direction().orElseThrow().text())
                .isEqualTo("77.3°");
    }

    /** The same search without the holes held finds trains that need other plates. */
    @Test
    void trains_found_with_nothing_held_need_other_plates() {
        List<Place> kept = holes(BRIEF, TRAIN);

        assertThat(front(BRIEF))
                .extracting(rating -> holes(BRIEF, rating.train()))
                .anyMatch(holes -> !holes.equals(kept));
    }

    @Test
    void the_kept_train_meets_what_is_held_and_none_found_is_beaten_by_it() {
        TrainRater rater = new TrainRater(HELD);
        Rating kept = rater.rate(TRAIN);

        assertThat(kept.missed()).isEmpty();
        assertThat(new TrainPlacing(rater).placeable(TRAIN, () -> false)).isTrue();
        assertThat(front(HELD))
                .anyMatch(rating ->
                        rating.cell().equals(kept.cell()) || rating.cell().dominates(kept.cell()));
    }

    @Test
    void the_front_on_drilled_plates_is_that_of_plain_loops() {
        TrainPlacing placing = new TrainPlacing(new TrainRater(HELD));
        List<Rating> placed = PlainLoops.feasible(HELD).stream()
                .filter(rating -> placing.placeable(rating.train(), () -> false))
                .toList();

        assertThat(placed).hasSizeGreaterThan(5);
        assertThat(front(HELD).stream().map(Rating::train).toList())
                .isEqualTo(PlainLoops.front(placed).stream().map(Rating::train).toList());
    }

    /** Without listed halves the constraint model alone keeps the distances. */
    @ParameterizedTest
    @EnumSource(Shortcut.class)
    void the_front_on_drilled_plates_is_the_same_without_each_of_the_shortcuts(Shortcut left) {
        assertThat(trains(SearchSettings.USUAL.without(left))).isEqualTo(trains(SearchSettings.USUAL));
    }

    @Test
    void the_front_on_drilled_plates_is_the_same_without_any_shortcut() {
        assertThat(trains(SearchSettings.USUAL.without(Shortcut.values()))).isEqualTo(trains(SearchSettings.USUAL));
    }

    private static List<Train> trains(SearchSettings settings) {
        return TrainSearch.run(HELD, SearchListener.SILENT, () -> false, settings).front().stream()
                .map(Rating::train)
                .toList();
    }

    @Test
    void what_is_held_is_a_brief_in_order_and_comes_back_from_its_file() {
        assertThat(BriefReader.read(BriefWriter.tree(HELD)).accepted()).contains(HELD);
    }

    @Test
    void distances_are_held_as_they_are_and_directions_as_round_as_they_can_be() {
        assertThat(HELD.locks().meshes())
                .extracting(lock -> lock.distance().orElseThrow().text())
                // m (z + p) / 2, by hand.
                .containsExactly("52.5 mm", "42 mm", "41.5 mm");
        // The grid has every fifteenth degree.
        assertThat(HELD.locks().meshes())
                .extracting(lock -> lock.direction().orElseThrow().text())
                .allMatch(text -> Integer.parseInt(text.replaceAll(" ?(°|deg)", "")) % 15 == 0);
        assertThat(HELD.locks().meshesBelow()).contains(2);
        assertThat(HELD.locks().escapeTeeth()).isEmpty();
        assertThat(HELD.locks().motionDirection()).isPresent();
        // The pallets embrace 7 1/2 of 30 spaces, an eighth of a turn to either side: r_w / cos 45°.
        assertThat(HELD.locks().palletDistance().orElseThrow().si())
                .isCloseTo(BRIEF.escapement().wheelRadius().si() * Math.sqrt(2), within(0.5e-9));
        assertThat(HELD.locks().drumDiameter()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/locks/meshes/1/distance = \"42.5 mm\"",
                "/locks/meshes/1/direction = \"47.5 deg\"",
                "/locks/motionDirection = \"47.5 deg\"",
                "/locks/escapeTeeth = 27 & /locks/palletDistance = remove",
                "/frame/dialFromLeft = \"95 mm\""
            })
    void each_of_what_is_held_settles_a_hole(String other) {
        Brief moved = Briefs.with(HELD, other);

        List<Rating> found = front(moved);

        assertThat(found).isNotEmpty();
        assertThat(found)
                .allSatisfy(rating -> assertThat(holes(moved, rating.train())).isNotEqualTo(holes(BRIEF, TRAIN)));
    }

    /** Parts of a brief on which these holes hang; each is a violating case of a lock that no train meets then. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/escapement/wheelRadius = \"19 mm\" | /locks/palletDistance | E30",
                "/locks/escapeTeeth = 27 | /locks/palletDistance | E27",
                "/locks/motionDistance = \"21 mm\" | /locks/motionDistance | E30",
                "/teeth/leaves/from = 9 & /teeth/leaves/to = 9 | /locks/motionDistance | E30"
            })
    void no_train_is_found_when_the_brief_would_move_a_hole(String change, String lock, String wheel) {
        Brief changed = Briefs.with(HELD, change);
        TrainRater rater = new TrainRater(changed);

        assertThat(front(changed)).isEmpty();
        assertThat(PlainLoops.feasible(changed)).isEmpty();
        Optional<HeldDemand> held = HeldDemand.of(changed).stream()
                .filter(demand -> demand.pointer().equals(lock))
                .findFirst();
        assertThat(held).isPresent();
        assertThat(held.get().metBy(rater.rate(Trains.of(KEPT.replace("E30", wheel), "36", 1))))
                .isFalse();
        assertThat(held.get().metBy(new TrainRater(HELD).rate(TRAIN))).isTrue();
    }

    /** What is held of these two is met to the nanometre. */
    @ParameterizedTest
    @CsvSource({
        "/locks/palletDistance, 0.4, true",
        "/locks/palletDistance, 1.6, false",
        "/locks/motionDistance, -0.4, true",
        "/locks/motionDistance, -1.6, false"
    })
    void a_distance_of_the_brief_is_kept_to_the_nanometre(String pointer, double off, boolean met) {
        Quantity held = Quantity.parse(
                Dimension.LENGTH, BriefWriter.tree(HELD).at(pointer).textValue());
        Brief moved = Briefs.with(
                HELD,
                "%s = \"%s m\""
                        .formatted(
                                pointer, new BigDecimal(held.si() + off * 1e-9).setScale(12, RoundingMode.HALF_EVEN)));

        assertThat(new TrainRater(moved).rate(TRAIN).feasible()).isEqualTo(met);
    }

    @Test
    void locks_on_counts_that_the_maker_has_set_stay() {
        Brief drum = Briefs.with(BRIEF, "/locks/drumDiameter = \"36 mm\"");
        Brief leaves =
                Briefs.with(drum, "/locks/meshes = [{\"place\": {\"side\": \"below\", \"number\": 2}, \"leaves\": 9}]");

        Brief held = KeptHoles.of(leaves, TRAIN, LAYOUT);

        assertThat(held.locks().drumDiameter()).isEqualTo(drum.locks().drumDiameter());
        assertThat(held.locks().meshes().get(2).leaves()).contains(9);
        assertThat(held.locks().meshes().get(2).distance()).isPresent();
    }

    @Test
    void the_dials_place_stays_as_it_was_typed() {
        // 110 mm, where the dial stands without being asked to, is no whole number of inches; 4.4 in are 111.76 mm.
        Brief typed = Briefs.with(BRIEF, "/frame/dialFromLeft = \"4.4 in\"");
        Layout layout = TrainPlacing.layout(typed, TRAIN, () -> false).orElseThrow();

        assertThat(KeptHoles.of(typed, TRAIN, layout)
                        .frame()
                        .dialFromLeft()
                        .orElseThrow()
                        .text())
                .isEqualTo("4.4 in");
        assertThat(HELD.frame().dialFromLeft().orElseThrow().text()).isEqualTo("110 mm");
    }

    @Test
    void a_layout_of_another_train_is_refused() {
        Train other = Trains.of("75/9 m1.25 | 75/9 m1 · 74/9 m1 · 74/9 m1 · E30", "36", 1);

        assertThatThrownBy(() -> KeptHoles.of(BRIEF, other, LAYOUT))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must be that of the train");
    }

    @Test
    void a_distance_that_no_pair_makes_is_the_clash() {
        Brief brief = Briefs.demoWith(FEW
                + " & /locks/meshes = [{\"place\": {\"side\": \"below\", \"number\": 1}, \"distance\": \"42.1 mm\"}]");

        SearchOutcome outcome = TrainSearch.run(brief, SearchListener.SILENT, () -> false);

        assertThat(((SearchOutcome.NoTrain) outcome).clash().demands())
                .extracting(HeldDemand::pointer)
                .containsExactly("/locks/meshes/0/distance");
    }

    @Test
    void a_distance_and_the_module_that_cannot_make_it_are_the_clash_together() {
        // 74 to 77 teeth and 8 or 9 leaves of 1 mm stand 41 to 43 mm apart; of 1.25 mm, 51.25 to 53.75 mm.
        Brief brief = Briefs.demoWith(
                FEW
                        + " & /locks/meshes = [{\"place\": {\"side\": \"below\", \"number\": 1}, \"distance\": \"42 mm\", \"module\": \"1.25 mm\"}]");

        SearchOutcome outcome = TrainSearch.run(brief, SearchListener.SILENT, () -> false);

        assertThat(((SearchOutcome.NoTrain) outcome).clash().demands())
                .extracting(HeldDemand::pointer)
                .containsExactly("/locks/meshes/0/module", "/locks/meshes/0/distance");
    }
}
