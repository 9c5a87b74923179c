// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.brief.Brief;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.HandTeeth;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every demand met and missed. One train of the demonstration brief meets all; each row of the table changes the brief so
 * that exactly the demands named are missed. The train: 8.5 hours a drum turn, 7308 beats an hour, and by hand 21.22 turns in
 * a fall, 7.52 days, a layer of 39.1 mm, wheels of 70, 60, 47 and 50 mm.
 */
class DemandTest {
    /** The demonstration brief with bare rods, so that clearances are as reckoned by hand. */
    private static Brief bare(String edits) {
        return Briefs.demoWith("/parts/hubWall = \"0 mm\" & " + edits);
    }

    private static final Train TRAIN = Trains.of("68/8 m1 | 58/9 m1 · 45/10 m1 · 48/8 m1 · E21", "36", 2);

    private static final String ALL_LOCKS = "/locks = {\"meshes\": [{\"place\": {\"side\": \"below\", \"number\": 2},"
            + " \"wheel\": 45, \"leaves\": 10, \"module\": \"1.000 mm\"}], \"meshesAbove\": 1, \"meshesBelow\": 3,"
            + " \"drumDiameter\": \"3.6 cm\", \"falls\": 2, \"escapeTeeth\": 21}";

    @ParameterizedTest
    @EnumSource(Demand.class)
    void the_train_meets_every_demand(Demand demand) {
        String all = "/weight/builders = \"1 %\" & /beat/beatsPerHour = {\"from\": \"7308\", \"to\": \"7308\"} & "
                + ALL_LOCKS;
        Rating rating = rate(demand == Demand.SECONDS_HAND ? secondsBrief() : all);
        if (demand == Demand.SECONDS_HAND) {
            rating = new TrainRater(bare(secondsBrief())).rate(secondsTrain());
        }

        assertThat(rating.demands())
                .filteredOn(figure -> figure.demand() == demand)
                .isNotEmpty()
                .allMatch(DemandFigure::met);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "RUN_AT_LEAST; /run/atLeast = \"7.6 d\"",
                "RUN_AT_MOST; /run/atLeast = \"7 d\" & /run/wanted = \"7 d\" & /run/atMost = \"7.5 d\"",
                "SINGLE_LAYER; /drum/length = \"39 mm\"",
                "WEIGHT_LIMIT; /weight/limit = \"4.4 kg\"",
                "LINE_LOAD; /line/ratedLoad = \"175 N\"",
                // A tooth of a 26th part is 18 sin(180°/26) = 2.170 mm thick: 8 MPa hold 4.18 kg; of a 24th part 4.90
                // kg.
                "RATCHET; /drum/ratchet = {\"teeth\": 26, \"toothDepth\": \"2.5 mm\", \"thickness\": \"5 mm\"}",
                "BUILDERS; /weight/builders = \"100 %\" & /weight/reserve = \"1 %\"",
                "PENDULUM_LENGTH; /beat/pendulumLength/from = \"0.245 m\"",
                "BEATS_PER_HOUR; /beat/beatsPerHour = {\"from\": \"7308.001\", \"to\": \"7400\"}",
                "BEATS_PER_HOUR; /beat/beatsPerHour = {\"from\": \"7300\", \"to\": \"7307.999\"}",
                "ARC WEIGHT_LIMIT LINE_LOAD RATCHET TOOTH_BENDING; /escapement/reserveArc = \"12 deg\" & /beat/pendulumLength/from = \"0.2 m\"",
                "WHEEL_TEETH; /teeth/wheelTeeth/from = 46",
                "WHEEL_TEETH; /teeth/wheelTeeth/to = 67",
                "LEAVES; /teeth/leaves/from = 9",
                "LEAVES; /teeth/leaves/to = 9",
                "MODULE; /teeth/modules = [\"0.999999 mm\", \"1.000001 mm\"]",
                "MESHES; /train/below/to = 2",
                "MESHES; /train/above/from = 2",
                "DRUM_SIZE; /drum/diameter = {\"from\": \"24.1 mm\", \"to\": \"48.1 mm\", \"step\": \"2 mm\"}",
                "FALLS; /line/falls = [1]",
                "ESCAPE_TEETH; /escapement/teeth/from = 24",
                "PRINT_BED; /printer/bedDepth = \"69.999 mm\"",
                "TOOTH_BENDING; /material/allowable = \"6 MPa\"",
                "FRAME; /frame/width = \"69.999 mm\"",
                "CLEARANCE; /parts/gap = \"1.001 mm\"",
                "CLEARANCE; /parts/hubWall = \"0.001 mm\"",
                "LOCK; /locks/meshesAbove = 2",
                "LOCK; /locks/meshesBelow = 2",
                "LOCK; /locks/drumDiameter = \"34 mm\"",
                "LOCK; /locks/falls = 1",
                "LOCK; /locks/escapeTeeth = 24",
                "LOCK; /locks/meshes = [{\"place\": {\"side\": \"above\", \"number\": 1}, \"wheel\": 69}]",
                "LOCK; /locks/meshes = [{\"place\": {\"side\": \"below\", \"number\": 3}, \"leaves\": 9}]",
                "LOCK; /locks/meshes = [{\"place\": {\"side\": \"below\", \"number\": 1}, \"module\": \"1.25 mm\"}]",
                "LOCK; /locks/meshes = [{\"place\": {\"side\": \"above\", \"number\": 2}, \"wheel\": 68}]",
            })
    void a_brief_that_asks_for_more_misses_just_that_demand(String demands, String edits) {
        Rating rating = rate(edits);

        assertThat(missed(rating)).isEqualTo(named(demands));
        assertThat(rating.feasible()).isFalse();
    }

    // The same edges from the side where they are met.
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "/run/atLeast = \"7.5 d\"",
                "/beat/beatsPerHour = {\"from\": \"7308\", \"to\": \"7308\"}",
                "/teeth/wheelTeeth = {\"from\": 45, \"to\": 68}",
                "/teeth/leaves = {\"from\": 8, \"to\": 10}",
                "/teeth/modules = [\"1.000 mm\"]",
                "/drum/diameter = {\"from\": \"36 mm\", \"to\": \"36.00 mm\", \"step\": \"2 mm\"}",
                "/drum/diameter = {\"from\": \"3.3 cm\", \"to\": \"36.3 mm\", \"step\": \"0.3 mm\"}",
                "/printer/bedDepth = \"70 mm\"",
                "/frame/width = \"70 mm\"",
                "/material/allowable = \"6.2 MPa\"",
                "/drum/ratchet = {\"teeth\": 24, \"toothDepth\": \"2.5 mm\", \"thickness\": \"5 mm\"}",
                // Escape wheel of 26 mm beside an arbor of 1 mm on a centre distance of 28 mm: exactly the gap.
                "/parts/gap = \"1 mm\"",
            })
    void what_just_fits_is_met(String edits) {
        assertThat(missed(rate(edits))).isEmpty();
    }

    // Two widths of a nozzle of 0.8 mm leave no tooth of module 1 mm; a module larger by a half gives one.
    @Test
    void teeth_finer_than_two_nozzle_widths_are_missed() {
        TrainRater coarse = new TrainRater(bare("/printer/nozzle = \"0.8 mm\""));
        DemandFigure fine = size(coarse, TRAIN);
        DemandFigure large = size(coarse, Trains.of("68/8 m1.5 | 58/9 m1 · 45/10 m1 · 48/8 m1 · E21", "36", 2));

        assertThat(fine.met()).isFalse();
        assertThat(fine.figure()).isLessThan(0.0016);
        assertThat(fine.from()).hasValue(0.0016);
        assertThat(large.met()).isTrue();
        assertThat(large.figure()).isGreaterThanOrEqualTo(0.0016);
        assertThat(size(new TrainRater(bare("")), TRAIN).met()).isTrue();
    }

    private static DemandFigure size(TrainRater rater, Train train) {
        return rater.rate(train).demands().stream()
                .filter(figure ->
                        figure.demand() == Demand.TOOTH_SIZE && figure.place().equals("above-1"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_seconds_hand_without_its_arbor_is_missed() {
        Rating rating = rate(secondsBrief());

        assertThat(missed(rating)).contains(Demand.SECONDS_HAND);
    }

    @Test
    void a_mesh_that_steps_down_is_missed() {
        Train slow = Trains.of("9/10 m1 | 58/9 m1 · 45/10 m1 · 48/8 m1 · E21", "36", 2);

        assertThat(missed(new TrainRater(bare("")).rate(slow))).contains(Demand.STEPS_UP);
        assertThat(missed(new TrainRater(bare(""))
                        .rate(Trains.of("10/10 m1 | 58/9 m1 · 45/10 m1 · 48/8 m1 · E21", "36", 2))))
                .doesNotContain(Demand.STEPS_UP);
    }

    // A rational limit is never met exactly by a duration that holds π. Two limits a unit of the twentieth decimal
    // apart, with
    // the true duration between them: the same number in double, told apart all the same.
    @Test
    void a_duration_is_never_accepted_by_rounding() {
        BigFraction hours = new TrainRater(bare("")).rate(TRAIN).durationRoundedDown();
        BigDecimal below = new BigDecimal(hours.getNumerator())
                .divide(new BigDecimal(hours.getDenominator()), 20, RoundingMode.FLOOR);
        BigDecimal above = below.add(below.ulp());

        assertThat(below.doubleValue()).isEqualTo(above.doubleValue()).isBetween(180.3, 180.4);
        assertThat(missed(rate("/run/atLeast = \"%s h\"".formatted(below)))).isEmpty();
        assertThat(missed(rate("/run/atLeast = \"%s h\"".formatted(above)))).isEqualTo(Set.of(Demand.RUN_AT_LEAST));
        String atMost = "/run/atLeast = \"7 d\" & /run/wanted = \"7 d\" & /run/atMost = \"%s h\"";
        assertThat(missed(rate(atMost.formatted(above)))).isEmpty();
        assertThat(missed(rate(atMost.formatted(below)))).isEqualTo(Set.of(Demand.RUN_AT_MOST));
    }

    // Figures beside their limits, by hand, in SI units; tolerance half of the last digit written.
    @ParameterizedTest
    @CsvSource({
        "RUN_AT_LEAST, '', 649352, 648000, none, 0.5",
        "RUN_AT_MOST, '', 649352, none, 777600, 0.5",
        "SINGLE_LAYER, '', 0.0391175, none, 0.040, 0.0000005",
        "PENDULUM_LENGTH, '', 0.241005, 0.24, 0.26, 0.0000005",
        "WHEEL_TEETH, above-1, 68, 24, 90, 0",
        "LEAVES, below-2, 10, 8, 12, 0",
        "STEPS_UP, below-3, 48, 8, none, 0",
        "PRINT_BED, below-1, 0.060, none, 0.220, 1e-12",
        "FRAME, above-1, 0.150, 0, none, 1e-12",
        "CLEARANCE, escape wheel and arbor 4, 0.001, 0.001, none, 1e-12",
        "CLEARANCE, drum flange and arbor 2, 0.014, 0.001, none, 1e-12",
        "CLEARANCE, wheel on arbor 2 and arbor 1, 0.006, 0.001, none, 1e-12",
        "MESHES, below, 3, 2, 3, 0",
        "LOCK, drum diameter, 0.036, 0.036, 0.036, 0",
        "LOCK, below-2 leaves, 10, 10, 10, 0",
    })
    void a_figure_stands_beside_its_limit(
            Demand demand, String place, double figure, String from, String to, double tolerance) {
        DemandFigure found = rate(ALL_LOCKS).demands().stream()
                .filter(candidate ->
                        candidate.demand() == demand && candidate.place().equals(place))
                .findFirst()
                .orElseThrow();

        assertThat(found.figure()).isCloseTo(figure, within(tolerance));
        assertThat(found.from().stream().boxed().toList()).isEqualTo(limit(from));
        assertThat(found.to().stream().boxed().toList()).isEqualTo(limit(to));
    }

    @Test
    void demands_stand_in_their_own_order_and_name_their_place_in_the_brief() {
        assertThat(rate(ALL_LOCKS).demands().stream().map(DemandFigure::demand).toList())
                .isSorted();
        assertThat(Demand.values()).allMatch(demand -> demand.pointer().startsWith("/"));
    }

    private static List<Double> limit(String text) {
        return text.equals("none") ? List.of() : List.of(Double.valueOf(text));
    }

    private static String secondsBrief() {
        return "/beat/secondsHand = true & /beat/pendulumLength = remove & /escapement/teeth/to = 60"
                + " & /escapement/teeth/step = 15 & /escapement/palletSpan = \"80 deg\"";
    }

    /** Two meshes of sixty turn the seconds arbor. */
    private static Train secondsTrain() {
        return Trains.of("68/8 m1 | 64/8 m1 · 60/8 m1 · E30", "36", 2);
    }

    private static Rating rate(String edits) {
        return HandTeeth.rater(bare(edits)).rate(TRAIN);
    }

    private static Set<Demand> missed(Rating rating) {
        return rating.missed()
                .map(DemandFigure::demand)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Demand.class)));
    }

    private static Set<Demand> named(String demands) {
        return Arrays.stream(demands.split(" "))
                .map(Demand::valueOf)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Demand.class)));
    }
}
