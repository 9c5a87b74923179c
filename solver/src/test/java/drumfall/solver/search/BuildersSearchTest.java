// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Clashes;
import drumfall.solver.explain.Easing;
import drumfall.solver.explain.Nearest;
import drumfall.solver.explain.NearestValues;
import drumfall.solver.rating.BuilderLimits;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.answers.WeightChance;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.SmallBriefs;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The search where a brief asks for a share of builders, against plain loops over every train whose builders are counted one
 * by one. The share asked for is that of one of the trains, so that some are served and some are not.
 */
class BuildersSearchTest {
    private static final boolean FULL = "full".equals(System.getProperty("drumfall.samples"));

    /** Every train counted takes thousands of walks. */
    private static final int MOST_TRAINS = FULL ? 2_000 : 60;

    private static final List<Counted> BRIEFS = counted(FULL ? 60 : 2, 9000).toList();

    /** A brief without the demand, and of every train that meets it the share that is served. */
    private record Counted(Brief brief, List<Rating> trains, Map<Rating, Double> shares) {
        static Counted of(Brief brief, List<Rating> trains) {
            TrainRater rater = new TrainRater(brief);
            Map<Rating, Double> shares = new HashMap<>();
            for (Rating rating : trains) {
                shares.put(
                        rating,
                        WeightChance.of(rater, rating.train(), BuilderLimits.TRIALS)
                                .thatRun(rating.recommendedWeight()));
            }
            return new Counted(brief, trains, shares);
        }

        /** The share that so many of the trains do not exceed. */
        double share(double ofTrains) {
            return shares.values().stream().sorted().toList().get((int) (ofTrains * (shares.size() - 1)));
        }

        Brief asking(double share) {
            return Briefs.with(brief, "/weight/builders = \"%s\"".formatted(share));
        }

        List<Rating> front(double share) {
            return PlainLoops.front(trains.stream()
                    .filter(rating -> shares.get(rating) >= share)
                    .toList());
        }
    }

    @TestFactory
    Stream<DynamicTest> the_front_is_that_of_the_trains_that_serve_enough() {
        return BRIEFS.stream()
                .flatMap(counted -> Stream.of(0.2, 0.6, 0.95)
                        .map(share -> DynamicTest.dynamicTest(
                                share + " of the trains fail", () -> sameFront(counted, share, SearchSettings.USUAL))));
    }

    @TestFactory
    Stream<DynamicTest> the_front_is_the_same_without_each_of_the_shortcuts() {
        List<Counted> briefs = BRIEFS.subList(0, FULL ? 10 : 1);
        return Stream.of(Shortcut.values())
                .flatMap(shortcut -> briefs.stream()
                        .map(counted -> DynamicTest.dynamicTest(
                                "without " + shortcut,
                                () -> sameFront(counted, 0.7, SearchSettings.USUAL.without(shortcut)))));
    }

    /** Few trains and nothing else that could stand in their way; with no reserve about half of all builders are served. */
    private static final String FEW =
            "/teeth/wheelTeeth = {\"from\": 60, \"to\": 61} & /teeth/leaves = {\"from\": 8, \"to\": 8}"
                    + " & /teeth/modules = [\"1 mm\"] & /train/above = {\"from\": 1, \"to\": 1}"
                    + " & /train/below = {\"from\": 2, \"to\": 2} & /escapement/teeth = {\"from\": 30, \"to\": 30, \"step\": 1}"
                    + " & /drum/diameter = {\"from\": \"36 mm\", \"to\": \"36 mm\", \"step\": \"1 mm\"} & /drum/length = \"300 mm\""
                    + " & /frame/arrangement = \"unplaced\" & /frame/width = \"300 mm\" & /frame/height = \"300 mm\""
                    + " & /frame/depth = \"400 mm\" & /parts/hubWall = \"0 mm\" & /parts/gap = \"0 mm\""
                    + " & /beat/pendulumLength = {\"from\": \"0.1 m\", \"to\": \"5 m\"}"
                    + " & /run = {\"atLeast\": \"1 h\", \"wanted\": \"5 d\", \"atMost\": \"90 d\"}"
                    + " & /weight/limit = \"400 kg\" & /line/ratedLoad = \"60000 N\" & /material/allowable = \"1000 MPa\""
                    + " & /weight/reserve = \"0 %\"";

    @Test
    void a_brief_that_no_train_serves_names_the_builders_alone() {
        SearchOutcome outcome = TrainSearch.run(
                Briefs.demoWith(FEW + " & /weight/builders = \"99 %\""), SearchListener.SILENT, () -> false);

        assertThat(outcome).isInstanceOf(SearchOutcome.NoTrain.class);
        Clash clash = ((SearchOutcome.NoTrain) outcome).clash();
        assertThat(clash.demands()).extracting(HeldDemand::demand).containsExactly(Demand.BUILDERS);
        assertThat(clash.demands().get(0).pointer()).isEqualTo("/weight/builders");
    }

    @Test
    void the_same_brief_has_trains_where_it_asks_for_fewer() {
        assertThat(TrainSearch.run(
                                Briefs.demoWith(FEW + " & /weight/builders = \"20 %\""),
                                SearchListener.SILENT,
                                () -> false)
                        .front())
                .isNotEmpty();
    }

    // What easing does to it: the share asked for comes down to what the best train serves, and a larger reserve
    // serves.
    @Test
    void the_nearest_share_is_that_of_the_train_that_serves_most() {
        Brief brief = Briefs.demoWith(FEW + " & /weight/builders = \"99 %\"");
        double most = PlainLoops.all(brief).stream()
                .flatMap(rating -> rating.demands().stream())
                .filter(figure -> figure.demand() == Demand.BUILDERS)
                .mapToDouble(figure -> figure.figure())
                .max()
                .orElseThrow();
        Easing fewer = Easing.of(brief).stream()
                .filter(easing -> easing.pointer().equals("/weight/builders"))
                .findFirst()
                .orElseThrow();

        Nearest nearest = NearestValues.of(brief, fewer, new Clashes(List.of(), false), () -> false);

        assertThat(nearest.value()).isEqualTo("%.1f%%".formatted(Math.floor(most * 1000) / 10));
    }

    @Test
    void the_nearest_reserve_serves_as_many_as_asked_and_five_in_a_hundred_less_does_not() {
        Brief brief = Briefs.demoWith(FEW + " & /weight/reserve = \"10 %\" & /weight/builders = \"90 %\"");
        Easing reserve = Easing.of(brief).stream()
                .filter(easing -> easing.pointer().equals("/weight/reserve"))
                .findFirst()
                .orElseThrow();

        Nearest nearest = NearestValues.of(brief, reserve, new Clashes(List.of(), false), () -> false);

        assertThat(nearest.verdict()).isEqualTo(Nearest.Verdict.NEAREST);
        int found = Integer.parseInt(nearest.value().replace("%", "").strip());
        assertThat(PlainLoops.none(Briefs.with(brief, "/weight/reserve = \"%d %%\"".formatted(found))))
                .isFalse();
        assertThat(PlainLoops.none(Briefs.with(brief, "/weight/reserve = \"%d %%\"".formatted(found - 5))))
                .isTrue();
    }

    @Test
    void a_brief_that_asks_for_no_builders_has_neither_easing_of_theirs() {
        assertThat(Easing.of(Briefs.demoWith(FEW)))
                .noneMatch(easing -> easing.pointer().equals("/weight/builders")
                        || easing.pointer().equals("/weight/reserve"));
    }

    private static Stream<Counted> counted(int count, long seed) {
        return SmallBriefs.fewer(seed)
                // A reserve that serves about half of all.
                .map(brief -> Briefs.with(brief, "/weight/reserve = \"5 %\""))
                .map(brief -> Map.entry(brief, PlainLoops.feasible(brief)))
                .filter(entry ->
                        entry.getValue().size() > 10 && entry.getValue().size() < MOST_TRAINS)
                .limit(count)
                .map(entry -> Counted.of(entry.getKey(), entry.getValue()));
    }

    private static void sameFront(Counted counted, double failing, SearchSettings settings) {
        double share = counted.share(failing);
        SearchOutcome outcome = TrainSearch.run(counted.asking(share), SearchListener.SILENT, () -> false, settings);
        List<Rating> expected = counted.front(share);
        assertThat(outcome.front().stream().map(Rating::train).toList())
                .isEqualTo(expected.stream().map(Rating::train).toList());
        assertThat(outcome.front().stream().map(Rating::cell).toList())
                .isEqualTo(expected.stream().map(Rating::cell).toList());
    }
}
