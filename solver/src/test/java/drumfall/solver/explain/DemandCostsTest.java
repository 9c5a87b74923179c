// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Objective;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.LeastRooms;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.SmallBriefs;
import drumfall.solver.search.PlainLoops;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.TrainSearch;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Costs against plain loops over every train of each changed brief. */
class DemandCostsTest {
    private static final int BRIEFS = "full".equals(System.getProperty("drumfall.samples")) ? 20 : 1;

    private static final List<Objective> WEIGHT_AND_FILAMENT = List.of(
            new Objective(ObjectiveFigure.RECOMMENDED_WEIGHT, share("1 %")),
            new Objective(ObjectiveFigure.FILAMENT_MASS, share("2 %")));

    private static Optional<Quantity> share(String text) {
        return Optional.of(Quantity.parse(Dimension.NUMBER, text));
    }

    private static List<Brief> briefs(int count) {
        return SmallBriefs.fewer(10 * count, 1).stream()
                .map(brief -> brief.withObjectives(WEIGHT_AND_FILAMENT))
                .filter(brief -> !PlainLoops.none(brief))
                .limit(count)
                .toList();
    }

    @Test
    void each_gain_is_that_of_the_lightest_train_no_worse_elsewhere() {
        int gains = 0;
        for (Brief brief : briefs(BRIEFS)) {
            List<Rating> front = PlainLoops.front(brief);
            Rating chosen = front.get(front.size() - 1);
            List<Cost> costs = costs(brief, chosen.train(), () -> false);
            for (Cost cost : costs) {
                if (!cost.step().easing().pointer().startsWith("/teeth")) {
                    asPlainLoopsSay(cost, chosen);
                }
            }
            gains += (int) costs.stream().filter(cost -> cost.gain() > 0).count();
            assertThat(costs.stream().map(cost -> -cost.gain())).isSorted();
        }
        assertThat(gains).isPositive();
    }

    /** The front keeps the lightest cell; which train stands for it is told by the stated order. */
    private static void asPlainLoopsSay(Cost cost, Rating chosen) {
        long limit = chosen.cell().numbers().get(1);
        Optional<Rating> lightest = PlainLoops.front(cost.step().brief()).stream()
                .filter(rating -> rating.cell().numbers().get(1) <= limit)
                .min(Comparator.comparingDouble(Rating::recommendedWeight));
        double gain = lightest.filter(rating ->
                        rating.cell().numbers().get(0) < chosen.cell().numbers().get(0))
                .map(rating -> chosen.recommendedWeight() - rating.recommendedWeight())
                .orElse(0.0);

        assertThat(cost.proved()).isTrue();
        assertThat(cost.best()).isEqualTo(lightest);
        assertThat(cost.gain()).isEqualTo(gain);
    }

    /** The chosen train is on the front for the room it takes alone: lighter trains are there, and take more. */
    @Test
    void where_little_room_is_wanted_no_gain_takes_more_room_than_the_chosen_train() {
        Brief brief = briefWithLeastHeight();
        Rating chosen = TrainSearch.run(brief, SearchListener.SILENT, () -> false).front().stream()
                .max(Comparator.comparingDouble(Rating::recommendedWeight))
                .orElseThrow();
        LeastRooms rooms = rooms(brief);
        long limit = rooms.steps(chosen.train(), () -> false).orElseThrow();
        Rating rated = new TrainRater(brief).rate(chosen.train());

        List<Cost> frames = costs(brief, chosen.train(), () -> false).stream()
                .filter(cost ->
                        cost.step().easing().pointer().matches("/frame/(width|depth)|/weight/limit|/fall/height"))
                .toList();

        assertThat(frames).hasSizeGreaterThan(1);
        for (Cost cost : frames) {
            LeastRooms there = rooms(cost.step().brief());
            Optional<Rating> lightest = PlainLoops.feasible(cost.step().brief()).stream()
                    .filter(rating -> rating.recommendedWeight() <= chosen.recommendedWeight() * 1.01)
                    .filter(rating -> there.steps(rating.train(), () -> false).orElse(Long.MAX_VALUE) <= limit)
                    .min(Comparator.comparingDouble(Rating::recommendedWeight));
            double gain = lightest.filter(rating -> rating.cell().numbers().get(0)
                            < rated.cell().numbers().get(0))
                    .map(rating -> chosen.recommendedWeight() - rating.recommendedWeight())
                    .orElse(0.0);
            assertThat(cost.gain()).as(cost.step().easing().pointer()).isEqualTo(gain);
        }
    }

    private static LeastRooms rooms(Brief brief) {
        TrainRater rater = new TrainRater(brief);
        return LeastRooms.of(rater, new TrainPlacing(rater)).orElseThrow();
    }

    private static Brief briefWithLeastHeight() {
        return SmallBriefs.fewer(30, 11_000).stream()
                .map(brief -> Briefs.with(
                        brief,
                        "/frame/depth = \"100 mm\" & /frame/width = \"240 mm\" & /frame/height = \"350 mm\""
                                + " & /frame/arrangement = \"upright\" & /parts/hubWall = \"1.2 mm\""
                                + " & /teeth/modules = [\"1 mm\", \"1.75 mm\"] & /weight/limit = \"100 kg\""
                                + " & /objectives = [{\"figure\": \"recommended-weight\", \"resolution\": \"0.5 %\"}]"
                                + " & /frame/least = {\"figure\": \"movement-height\", \"resolution\": \"2 mm\"}"))
                .map(SmallBriefs::fewer)
                .filter(brief -> PlainLoops.feasible(brief).size() <= 250)
                .filter(brief -> TrainSearch.run(brief, SearchListener.SILENT, () -> false)
                                .front()
                                .size()
                        > 1)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void costs_are_told_as_they_become_known_and_end_when_asked_to() {
        Brief brief = briefs(1).get(0);
        List<Cost> told = new ArrayList<>();

        List<Cost> costs = DemandCosts.of(
                brief,
                PlainLoops.front(brief).get(0).train(),
                told::add,
                SearchListener.SILENT,
                () -> told.size() >= 2);

        assertThat(costs).hasSize(2).containsExactlyInAnyOrderElementsOf(told);
    }

    private static List<Cost> costs(Brief brief, Train train, java.util.function.BooleanSupplier cancelled) {
        return DemandCosts.of(brief, train, cost -> {}, SearchListener.SILENT, cancelled);
    }
}
