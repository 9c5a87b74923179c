// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainOrder;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.SmallBriefs;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
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
        List<Brief> briefs = SmallBriefs.some(FULL ? 300 : 4, 7000);
        return Stream.of(2, 3, 10)
                .flatMap(one -> briefs.stream()
                        .map(brief -> DynamicTest.dynamicTest(
                                "one in " + one + " can be built",
                                () -> sameFront(brief, train -> lucky(train, one)))));
    }

    @TestFactory
    Stream<DynamicTest> a_train_exists_if_one_can_be_built() {
        return SmallBriefs.some(FULL ? 300 : 10, 8000).stream()
                .map(brief -> DynamicTest.dynamicTest(brief.name(), () -> {
                    boolean exists = PlainLoops.feasible(brief).stream().anyMatch(rating -> lucky(rating.train(), 40));
                    Existence found =
                            TrainSearch.existence(new TrainRater(brief), () -> false, train -> lucky(train, 40));
                    assertThat(found.some()).isEqualTo(exists);
                    assertThat(found.none()).isEqualTo(!exists);
                }));
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

    private static void sameFront(Brief brief, Predicate<Train> buildable) {
        SearchOutcome outcome = new TrainSearch(
                        new TrainRater(brief), SearchListener.SILENT, () -> false, SearchSettings.USUAL, buildable)
                .outcome();
        List<Rating> expected = front(PlainLoops.feasible(brief).stream()
                .filter(rating -> buildable.test(rating.train()))
                .toList());
        assertThat(outcome.front().stream().map(Rating::train).toList())
                .isEqualTo(expected.stream().map(Rating::train).toList());
    }

    private static List<Rating> front(List<Rating> trains) {
        return trains.stream()
                .filter(train -> trains.stream().noneMatch(other -> other.cell().dominates(train.cell())))
                .filter(train -> trains.stream()
                        .filter(other -> other.cell().equals(train.cell()))
                        .allMatch(other -> new TrainOrder().compare(train, other) <= 0))
                .sorted(Comparator.comparing(
                        rating -> rating.cell().numbers().stream()
                                .mapToLong(number -> number)
                                .toArray(),
                        Arrays::compare))
                .toList();
    }
}
