// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Nearest.Verdict;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.Rating;
import drumfall.solver.samples.Briefs;
import drumfall.solver.search.HeldDemand;
import drumfall.solver.search.PlainLoops;
import drumfall.solver.search.QuestionSettings;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.Shortcut;
import drumfall.solver.search.TrainSearch;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Explanations of briefs whose trains need places for their arbors: a rating does not speak of them. */
class PlacedExplanationsTest {
    private static final String FEW =
            "/train = {\"above\": {\"from\": 1, \"to\": 1}, \"below\": {\"from\": 1, \"to\": 1}}"
                    + " & /teeth/wheelTeeth = {\"from\": 74, \"to\": 75} & /teeth/leaves = {\"from\": 8, \"to\": 8}"
                    + " & /teeth/modules = [\"1 mm\", \"1.25 mm\"] & /escapement/teeth = {\"from\": 30, \"to\": 30, \"step\": 3}"
                    + " & /run = {\"atLeast\": \"1 d\", \"wanted\": \"8 d\", \"atMost\": \"20 d\"} & /weight/limit = \"60 kg\""
                    + " & /beat = {\"beatsPerHour\": {\"from\": \"250\", \"to\": \"700\"}, \"secondsHand\": false}"
                    + " & /line/ratedLoad = \"20000 N\" & /material/allowable = \"200 MPa\"";

    /** Wheels go into these frames, trains do not: the nearest figure is one at which a train has places, not only a rating. */
    @ParameterizedTest
    @CsvSource({"140 mm, 110 mm, /frame/height"})
    void the_nearest_frame_takes_a_train_and_one_a_step_smaller_takes_none(
            String width, String height, String pointer) {
        Brief brief = Briefs.demoWith(FEW + " & /frame/width = \"" + width + "\" & /frame/height = \"" + height + "\"");
        Easing easing = easing(brief, pointer);
        EasingSteps steps = new EasingSteps(brief, easing);

        Nearest nearest = NearestValues.of(brief, easing, new Clashes(List.of(), false), () -> false);

        assertThat(nearest.verdict()).isEqualTo(Verdict.NEAREST);
        int count = 1;
        while (!steps.text(count).equals(nearest.value())) {
            count++;
        }
        assertThat(count).isGreaterThan(1);
        assertThat(hasTrains(steps.at(count).orElseThrow())).isTrue();
        assertThat(hasTrains(steps.at(count - 1).orElseThrow())).isFalse();
    }

    /** Pinions of sixteen leaves print at either module, those of six to twelve that the motion work would need do not. */
    @Test
    void a_motion_work_that_does_not_print_clashes_with_the_clearance_it_is_to_keep() {
        Brief brief = Briefs.demoWith(FEW
                + " & /teeth/leaves = {\"from\": 6, \"to\": 16} & /printer/nozzle = \"0.7 mm\""
                + " & /locks/meshes = [" + sixteenLeaves("above", 1) + ", " + sixteenLeaves("below", 1) + "]"
                + " & /frame/width = \"400 mm\" & /frame/height = \"400 mm\"");

        Clashes clashes = ClashLister.of(brief, 6, SearchListener.SILENT, () -> false);

        assertThat(hasTrains(brief)).isFalse();
        assertThat(clashes.complete()).isTrue();
        assertThat(clashes.list()).hasSize(1);
        assertThat(clashes.list().get(0).demands())
                .extracting(HeldDemand::demand)
                .containsExactlyInAnyOrder(Demand.TOOTH_SIZE, Demand.CLEARANCE);
        assertThat(clashesWithoutPackedPlanes(brief)).isEqualTo(clashes);
    }

    private static Clashes clashesWithoutPackedPlanes(Brief brief) {
        return ClashLister.of(
                brief,
                6,
                known -> {},
                SearchListener.SILENT,
                () -> false,
                ExplainSettings.USUAL.asking(QuestionSettings.USUAL.without(Shortcut.PACK_PLANES)));
    }

    /** The lightest train has no place in this frame, so that its weight is no limit for those that have. */
    @Test
    void a_train_without_places_hides_no_heavier_one_that_has_some() {
        Brief brief = Briefs.demoWith(FEW + " & /frame/width = \"140 mm\" & /frame/height = \"135 mm\""
                + " & /objectives = [{\"figure\": \"recommended-weight\", \"resolution\": \"0.1 %\"}]");
        Rating placed = TrainSearch.unexplained(brief, SearchListener.SILENT, () -> false)
                .front()
                .get(0);
        Rating lightest = PlainLoops.front(brief).get(0);
        List<Cost> told = new ArrayList<>();

        DemandCosts.of(brief, lightest.train(), told::add, SearchListener.SILENT, () -> told.size() == 2);

        assertThat(lightest.recommendedWeight()).isLessThan(placed.recommendedWeight());
        assertThat(told.get(1).best()).map(Rating::train).contains(placed.train());
        assertThat(told.get(1).gain()).isZero();
    }

    private static String sixteenLeaves(String side, int number) {
        return "{\"place\": {\"side\": \"%s\", \"number\": %d}, \"leaves\": 16}".formatted(side, number);
    }

    private static Easing easing(Brief brief, String pointer) {
        return Easing.of(brief).stream()
                .filter(easing -> easing.pointer().equals(pointer))
                .findFirst()
                .orElseThrow();
    }

    private static boolean hasTrains(Brief brief) {
        return !TrainSearch.unexplained(brief, SearchListener.SILENT, () -> false)
                .front()
                .isEmpty();
    }
}
