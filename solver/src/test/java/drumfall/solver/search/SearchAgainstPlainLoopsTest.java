// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import drumfall.solver.samples.SmallBriefs;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The search against plain loops over every train, which share only the rating. Cells and the trains that stand for them
 * are compared whole; figures are equal to the last bit, so no tolerance is needed.
 */
class SearchAgainstPlainLoopsTest {
    private static final boolean FULL = "full".equals(System.getProperty("drumfall.samples"));

    /** Fronts by plain loops, for briefs that are searched several times. */
    private static final Map<Brief, List<Rating>> FRONTS = new ConcurrentHashMap<>();

    @TestFactory
    Stream<DynamicTest> the_front_is_that_of_plain_loops() {
        return SmallBriefs.fewer(FULL ? 1000 : 30, 1).stream()
                .map(brief -> DynamicTest.dynamicTest(describe(brief), () -> sameFront(brief, SearchSettings.USUAL)));
    }

    @TestFactory
    Stream<DynamicTest> the_front_is_that_of_plain_loops_where_each_of_three_meshes_has_a_choice_of_modules() {
        return SmallBriefs.large(FULL ? 20 : 1, 1).stream()
                .map(brief -> DynamicTest.dynamicTest(describe(brief), () -> sameFront(brief, SearchSettings.USUAL)));
    }

    @TestFactory
    Stream<DynamicTest> the_front_is_the_same_without_each_of_the_shortcuts() {
        List<Brief> briefs = SmallBriefs.fewer(FULL ? 100 : 2, 2000);
        return Stream.of(Shortcut.values())
                .flatMap(shortcut -> briefs.stream()
                        .map(brief -> DynamicTest.dynamicTest(
                                "without " + shortcut + " " + describe(brief),
                                () -> sameFront(brief, SearchSettings.USUAL.without(shortcut)))));
    }

    @TestFactory
    Stream<DynamicTest> the_front_is_the_same_without_any_shortcut() {
        return SmallBriefs.fewer(FULL ? 50 : 4, 3000).stream()
                .map(brief -> DynamicTest.dynamicTest(
                        describe(brief), () -> sameFront(brief, SearchSettings.USUAL.without(Shortcut.values()))));
    }

    @Test
    void the_sample_holds_briefs_with_many_trains_with_few_and_with_none() {
        List<Integer> sizes = SmallBriefs.fewer(30, 1).stream()
                .map(brief -> TrainSearch.run(brief, SearchListener.SILENT, () -> false)
                        .front()
                        .size())
                .toList();
        assertThat(sizes).filteredOn(size -> size == 0).hasSizeBetween(3, 21);
        assertThat(sizes).filteredOn(size -> size > 0).hasSizeGreaterThan(9);
        assertThat(sizes).filteredOn(size -> size > 5).hasSizeGreaterThan(2);
    }

    private static void sameFront(Brief brief, SearchSettings settings) {
        SearchOutcome outcome = TrainSearch.run(brief, SearchListener.SILENT, () -> false, settings);
        List<Rating> expected = FRONTS.computeIfAbsent(brief, PlainLoops::front);
        assertThat(outcome.heading()).isEqualTo(expected.isEmpty() ? "no train exists" : "proved complete");
        assertThat(outcome.front().stream().map(Rating::cell).toList())
                .isEqualTo(expected.stream().map(Rating::cell).toList());
        assertThat(outcome.front().stream().map(Rating::train).toList())
                .isEqualTo(expected.stream().map(Rating::train).toList());
    }

    private static String describe(Brief brief) {
        return brief.objectives().stream()
                        .map(objective -> objective.figure().word())
                        .toList() + " locks " + brief.locks();
    }
}
