// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.LayoutOutcome;
import drumfall.solver.layout.LayoutOutcome.Merit;
import drumfall.solver.layout.LayoutOutcome.NoLayout;
import drumfall.solver.layout.LayoutOutcome.Placed;
import drumfall.solver.layout.Movements;
import drumfall.solver.layout.check.LayoutCheck;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The placer against plain loops over all directions and all orders of the planes, judged by the check. Lengths are whole
 * nanometres on both sides, so no tolerance is needed.
 */
class PlacerAgainstPlainLoopsTest {
    private static final int CASES = "full".equals(System.getProperty("drumfall.samples")) ? 500 : 25;

    @TestFactory
    Stream<DynamicTest> a_layout_is_found_if_there_is_one_and_none_is_better() {
        return needs().map(need -> DynamicTest.dynamicTest(describe(need), () -> agrees(need)));
    }

    @Test
    void the_sample_holds_movements_that_can_be_placed_and_others_that_cannot() {
        List<LayoutOutcome> outcomes =
                needs().map(need -> Placer.place(need, () -> false)).toList();
        assertThat(outcomes).filteredOn(NoLayout.class::isInstance).hasSizeBetween(CASES / 10, 8 * CASES / 10);
        assertThat(outcomes)
                .filteredOn(outcome -> outcome instanceof NoLayout none && none.scope() == LayoutOutcome.Scope.ON_GRID)
                .hasSizeGreaterThan(CASES / 20);
    }

    private static Stream<LayoutNeed> needs() {
        return LongStream.rangeClosed(1, CASES).mapToObj(Movements::drawn);
    }

    private static void agrees(LayoutNeed need) {
        long[] expected = PlainLayouts.bestScore(need);
        LayoutOutcome outcome = Placer.place(need, () -> false);
        if (outcome instanceof Placed placed) {
            Layout layout = placed.layout();
            assertThat(layout.need()).isEqualTo(need);
            assertThat(LayoutCheck.faults(layout)).isEmpty();
            assertThat(placed.merit()).isEqualTo(need.preference().wishes().isEmpty() ? Merit.ANY : Merit.BEST_ON_GRID);
            agrees(need, PlainLayouts.score(layout), expected);
        } else {
            assertThat(outcome).isInstanceOf(NoLayout.class);
            assertThat(expected).isNull();
        }
    }

    /** Loops that see only some places of the frame may miss the best layout, or all; they must never do better. */
    private static void agrees(LayoutNeed need, long[] found, long[] expected) {
        if (PlainLayouts.seesAllFrames(need)) {
            assertThat(found).isEqualTo(expected);
        } else if (expected != null) {
            assertThat(Arrays.compare(found, expected)).isLessThanOrEqualTo(0);
        }
    }

    private static String describe(LayoutNeed need) {
        return "%d meshes, centre %d, %s, %s"
                .formatted(
                        need.parts().meshes().size(),
                        need.parts().centreArbor(),
                        need.envelope(),
                        need.preference().wishes());
    }
}
