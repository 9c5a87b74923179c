// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import drumfall.solver.samples.Briefs;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Briefs at the edges of what can be asked, against plain loops over every train. */
class AwkwardBriefsTest {
    /** The largest number that the constraint solver adds up safely, {@code IntVar.MAX_INT_BOUND}. */
    private static final long MOST_INT = 21_474_836;

    private static final String ROOMY = "/run = {\"atLeast\": \"1 h\", \"wanted\": \"2 d\", \"atMost\": \"800 d\"}"
            + " & /weight/limit = \"500 kg\" & /line/ratedLoad = \"100000 N\" & /material/allowable = \"1000 MPa\""
            + " & /frame/arrangement = \"unplaced\" & /parts/hubWall = \"0 mm\" & /frame/width = \"1 m\" & /frame/height = \"1 m\" & /printer/bedWidth = \"3 m\" & /printer/bedDepth = \"3 m\""
            + " & /drum/length = \"50 mm\" & /frame/depth = \"90 mm\" & /line/falls = [1]"
            + " & /drum/diameter = {\"from\": \"30 mm\", \"to\": \"30 mm\", \"step\": \"2 mm\"}"
            + " & /beat = {\"beatsPerHour\": {\"from\": \"100\", \"to\": \"100000\"}, \"secondsHand\": false}";

    private static final String ONE_POINT = ROOMY
            + " & /teeth/wheelTeeth = {\"from\": 64, \"to\": 64} & /teeth/leaves = {\"from\": 8, \"to\": 8}"
            + " & /teeth/modules = [\"1 mm\"] & /escapement/teeth = {\"from\": 30, \"to\": 30, \"step\": 7}"
            + " & /train = {\"above\": {\"from\": 1, \"to\": 1}, \"below\": {\"from\": 2, \"to\": 2}}";

    private static final String EQUAL_RATIOS = ROOMY
            + " & /teeth/wheelTeeth = {\"from\": 48, \"to\": 54} & /teeth/leaves = {\"from\": 8, \"to\": 9}"
            + " & /teeth/modules = [\"1 mm\", \"1.000001 mm\"] & /escapement/teeth = {\"from\": 30, \"to\": 30, \"step\": 1}"
            + " & /train = {\"above\": {\"from\": 1, \"to\": 1}, \"below\": {\"from\": 1, \"to\": 1}}"
            + " & /beat = {\"beatsPerHour\": {\"from\": \"360\", \"to\": \"360\"}, \"secondsHand\": false}";

    /** Four wheels of 280 and more: their product with the escape wheel passes a hundred times what the solver adds up. */
    private static final String LARGE_PRODUCTS = ROOMY
            + " & /teeth/wheelTeeth = {\"from\": 280, \"to\": 281} & /teeth/leaves = {\"from\": 59, \"to\": 60}"
            + " & /teeth/modules = [\"1 mm\"] & /escapement/teeth = {\"from\": 29, \"to\": 30, \"step\": 1}"
            + " & /train = {\"above\": {\"from\": 1, \"to\": 1}, \"below\": {\"from\": 3, \"to\": 4}}";

    @ParameterizedTest
    @ValueSource(strings = {ONE_POINT, EQUAL_RATIOS, LARGE_PRODUCTS})
    void the_front_is_that_of_plain_loops(String edits) {
        Brief brief = Briefs.demoWith(edits);
        List<Rating> expected = PlainLoops.front(brief);

        assertThat(expected).isNotEmpty();
        assertThat(front(brief, SearchSettings.USUAL)).isEqualTo(trains(expected));
        assertThat(front(brief, SearchSettings.USUAL.without(Shortcut.LIST_HALVES)))
                .isEqualTo(trains(expected));
    }

    @Test
    void the_large_products_are_past_what_the_constraint_solver_adds_up() {
        assertThat(280L * 280 * 280 * 29).isGreaterThan(MOST_INT);
        assertThat(59L * 59 * 59 * 59).isLessThan(Integer.MAX_VALUE);
    }

    @Test
    void no_wheel_is_as_large_as_any_pinion() {
        Brief brief = Briefs.demoWith(
                ROOMY + " & /teeth/wheelTeeth = {\"from\": 6, \"to\": 8} & /teeth/leaves = {\"from\": 9, \"to\": 10}");

        SearchOutcome outcome = TrainSearch.run(brief, SearchListener.SILENT, () -> false);

        assertThat(outcome).isInstanceOf(SearchOutcome.NoTrain.class);
        assertThat(((SearchOutcome.NoTrain) outcome).clash()).isEqualTo(new Clash(List.of(), true));
    }

    /** A limit that is exactly what a train weighs lets it through, and the next smaller number does not. */
    @Test
    void a_train_at_its_weight_limit_is_in_and_one_bit_above_it_is_out() {
        Brief roomy = Briefs.demoWith(ONE_POINT);
        double weight = PlainLoops.front(roomy).get(0).recommendedWeight();

        Brief at = Briefs.with(roomy, limit(weight));
        Brief below = Briefs.with(roomy, limit(Math.nextDown(weight)));

        assertThat(front(at, SearchSettings.USUAL))
                .isEqualTo(trains(PlainLoops.front(at)))
                .hasSize(1);
        assertThat(front(below, SearchSettings.USUAL))
                .isEqualTo(trains(PlainLoops.front(below)))
                .isEmpty();
    }

    /** Cells whose edge is the very figure of a train: a resolution that divides the lightest weight. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 7, 10, 1000})
    void trains_on_the_edge_of_a_cell_are_told_apart_as_by_plain_loops(int cells) {
        Brief brief = Briefs.demoWith(EQUAL_RATIOS);
        double weight = PlainLoops.front(brief).get(0).recommendedWeight();
        Brief edged = Briefs.with(
                brief,
                "/objectives = [{\"figure\": \"recommended-weight\", \"resolution\": \"%s kg\"}, {\"figure\": \"filament-mass\","
                                .formatted(new BigDecimal(weight / cells)
                                        .toPlainString()
                                        .substring(0, 18))
                        + " \"resolution\": \"0.001 g\"}, {\"figure\": \"modules\"}]");

        assertThat(front(edged, SearchSettings.USUAL)).isEqualTo(trains(PlainLoops.front(edged)));
    }

    private static String limit(double kilograms) {
        return "/weight/limit = \"%s kg\""
                .formatted(BigDecimal.valueOf(kilograms).toPlainString());
    }

    private static List<String> front(Brief brief, SearchSettings settings) {
        return trains(TrainSearch.run(brief, SearchListener.SILENT, () -> false, settings)
                .front());
    }

    private static List<String> trains(List<Rating> front) {
        return front.stream()
                .map(rating -> rating.train() + " " + rating.train().drumDiameter() + rating.cell())
                .toList();
    }
}
