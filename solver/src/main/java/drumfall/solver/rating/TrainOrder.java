// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.LongStream;

/**
 * The stated order that picks one train to stand for a cell: the exact objective values in the brief's order, then the
 * recommended weight, then the counts.
 *
 * <p>Counts are compared number by number: meshes above the centre, meshes in all, then from the drum upwards wheel,
 * leaves and module of each mesh above the centre, drum diameter, falls, then the meshes below the centre and the escape
 * wheel. Everything above the centre comes before everything below, so that the order of two trains with the same upper
 * half is the order of their lower halves.
 */
public final class TrainOrder implements Comparator<Rating> {
    @Override
    public int compare(Rating first, Rating second) {
        int byValues = compareValues(first, second);
        if (byValues != 0) {
            return byValues;
        }
        int byWeight = Double.compare(first.recommendedWeight(), second.recommendedWeight());
        return byWeight != 0 ? byWeight : byCounts(first.train(), second.train());
    }

    /**
     * Compares by counts alone.
     *
     * @param first a train
     * @param second another
     */
    public static int byCounts(Train first, Train second) {
        int byShape = Comparator.comparingInt(Train::meshesAbove)
                .thenComparingInt(train -> train.meshes().size())
                .compare(first, second);
        if (byShape != 0) {
            return byShape;
        }
        return Arrays.compare(numbers(first), numbers(second));
    }

    private static int compareValues(Rating first, Rating second) {
        for (int i = 0; i < first.objectiveValues().size(); i++) {
            int compared = Double.compare(
                    first.objectiveValues().get(i), second.objectiveValues().get(i));
            if (compared != 0) {
                return compared;
            }
        }
        return 0;
    }

    private static long[] numbers(Train train) {
        LongStream drum = LongStream.of(
                train.drumDiameter().multiply(1_000_000_000).longValue(),
                train.reeving().falls());
        LongStream above = train.above().stream().flatMapToLong(TrainOrder::numbers);
        LongStream below = train.below().stream().flatMapToLong(TrainOrder::numbers);
        return LongStream.concat(
                        LongStream.concat(above, drum), LongStream.concat(below, LongStream.of(train.escapeTeeth())))
                .toArray();
    }

    private static LongStream numbers(Mesh mesh) {
        return LongStream.of(mesh.toothCount(), mesh.leafCount(), mesh.module().nanometres());
    }
}
