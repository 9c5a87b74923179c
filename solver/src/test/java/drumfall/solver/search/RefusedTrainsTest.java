// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Blame;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.SmallBriefs;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The search where some trains cannot be built, against plain loops that leave those trains out. Which trains those are is
 * made up here, by a rule that nothing in the search could guess: it looks at counts, modules, drum and reeving.
 */
class RefusedTrainsTest {
    private static final boolean FULL = "full".equals(System.getProperty("drumfall.samples"));

    @TestFactory
    Stream<DynamicTest> the_front_is_that_of_the_trains_that_can_be_built() {
        List<Brief> briefs = SmallBriefs.fewer(FULL ? 300 : 4, 7000);
        return briefs.stream()
                .flatMap(brief -> Stream.of(2, 3, 10)
                        .map(one -> DynamicTest.dynamicTest(
                                "one in " + one + " can be built",
                                () -> sameFront(brief, train -> blame(train, one), SearchSettings.USUAL))));
    }

    /** Then every round joins all halves anew, which must bring nothing more. */
    @TestFactory
    Stream<DynamicTest> the_front_is_the_same_if_each_round_joins_all_halves_again() {
        SearchSettings again = SearchSettings.USUAL.without(Shortcut.JOIN_ONCE);
        return SmallBriefs.fewer(FULL ? 300 : 4, 7500).stream()
                .map(brief ->
                        DynamicTest.dynamicTest(brief.name(), () -> sameFront(brief, train -> blame(train, 3), again)));
    }

    @TestFactory
    Stream<DynamicTest> a_train_exists_if_one_can_be_built() {
        return SmallBriefs.fewer(FULL ? 300 : 6, 8000).stream()
                .map(brief -> DynamicTest.dynamicTest(brief.name(), () -> {
                    boolean exists = PlainLoops.feasible(brief).stream().anyMatch(rating -> lucky(rating.train(), 40));
                    Existence found = TrainSearch.existence(
                            new TrainRater(brief), () -> false, QuestionSettings.USUAL, train -> blame(train, 40));
                    assertThat(found.some()).isEqualTo(exists);
                    assertThat(found.none()).isEqualTo(!exists);
                }));
    }

    /** Some halves are to blame by themselves. */
    @TestFactory
    Stream<DynamicTest> the_front_is_that_of_the_trains_that_can_be_built_where_halves_are_to_blame() {
        return SmallBriefs.fewer(FULL ? 600 : 5, 8500).stream()
                .map(brief -> DynamicTest.dynamicTest(
                        brief.name(), () -> sameFront(brief, RefusedTrainsTest::halfToBlame, SearchSettings.USUAL)));
    }

    private static Optional<Blame> halfToBlame(Train train) {
        List<Mesh> meshes = train.meshes();
        List<Mesh> above = meshes.subList(0, train.meshesAbove());
        List<Mesh> below = meshes.subList(train.meshesAbove(), meshes.size());
        if (Math.floorMod(above.hashCode() + train.drumDiameter().hashCode(), 3) == 0) {
            return Optional.of(Blame.ABOVE);
        }
        if (Math.floorMod(below.hashCode() + train.escapeTeeth(), 3) == 0) {
            return Optional.of(Blame.BELOW);
        }
        return blame(train, 2);
    }

    private static Optional<Blame> blame(Train train, int one) {
        return lucky(train, one) ? Optional.empty() : Optional.of(Blame.TOGETHER);
    }

    private static boolean lucky(Train train, int one) {
        int hash = 17;
        for (Mesh mesh : train.meshes()) {
            hash = hash * 31
                    + mesh.toothCount() * 7
                    + mesh.leafCount() * 3
                    + mesh.module().hashCode();
        }
        hash = hash * 31 + train.drumDiameter().hashCode() + train.reeving().falls() + 5 * train.escapeTeeth();
        return Math.floorMod((hash * 0x9E3779B9) >>> 8, one) == 0;
    }

    private static void sameFront(Brief brief, Function<Train, Optional<Blame>> buildable, SearchSettings settings) {
        SearchOutcome outcome =
                new TrainSearch(new TrainRater(brief), SearchListener.SILENT, () -> false, settings, buildable).found();
        List<Rating> expected = PlainLoops.front(PlainLoops.feasible(brief).stream()
                .filter(rating -> buildable.apply(rating.train()).isEmpty())
                .toList());
        assertThat(outcome.front().stream().map(Rating::train).toList())
                .isEqualTo(expected.stream().map(Rating::train).toList());
    }
}
