// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.rating.CellFront;
import drumfall.solver.rating.NonDominated;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainOrder;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * The halves whose trains would make the front if every train had a place for its arbors. Joined before all others, they
 * leave little for the rest to change, so that few trains have to be placed.
 *
 * @param uppers the upper halves, in the order given
 * @param lowers the lower halves, in the order given
 */
public record PairFront(List<UpperHalf> uppers, List<LowerHalf> lowers) {
    /** Parts that go through the upper halves in turn, on any number of threads with the same result. */
    private static final int PARTS = 4;

    /** So many are enough to begin with, and few enough to hold each pair against. */
    private static final int MOST = 2000;

    /** A train of two halves that is put together only to decide between equals. */
    private record Pair(UpperHalf upper, LowerHalf lower, HalfJoin join) implements Supplier<Train> {
        @Override
        public Train get() {
            return join.train(upper, lower);
        }
    }

    /**
     * Goes through all pairs.
     *
     * @param rater rates against the brief
     * @param uppers the upper halves
     * @param lowers the lower halves
     * @param found the front that has been found
     * @param cancelled asked often; once true the halves found so far are given
     */
    public static PairFront of(
            TrainRater rater,
            List<UpperHalf> uppers,
            List<LowerHalf> lowers,
            CellFront found,
            BooleanSupplier cancelled) {
        NonDominated<Supplier<Train>> front = known(rater, found);
        IntStream.range(0, PARTS)
                .parallel()
                .mapToObj(part -> hoped(part, rater, uppers, lowers, found, cancelled))
                .toList()
                .forEach(pairs -> pairs.forEach(pair -> offer(rater, pair, front)));
        List<Pair> pairs = pairs(front);
        Set<UpperHalf> above = new HashSet<>();
        Set<LowerHalf> below = new HashSet<>();
        for (Pair pair : pairs) {
            above.add(pair.upper);
            below.add(pair.lower);
        }
        return new PairFront(
                uppers.stream().filter(above::contains).toList(),
                lowers.stream().filter(below::contains).toList());
    }

    private static NonDominated<Supplier<Train>> known(TrainRater rater, CellFront found) {
        NonDominated<Supplier<Train>> front = new NonDominated<>(
                rater.objectives().asked(), (first, second) -> TrainOrder.byCounts(first.get(), second.get()));
        for (Rating rating : found.ratings()) {
            double[] values = rating.objectiveValues().stream()
                    .mapToDouble(value -> value)
                    .toArray();
            front.add(values, rating.recommendedWeight(), rating::train);
        }
        return front;
    }

    private static List<Pair> hoped(
            int part,
            TrainRater rater,
            List<UpperHalf> uppers,
            List<LowerHalf> lowers,
            CellFront found,
            BooleanSupplier cancelled) {
        NonDominated<Supplier<Train>> front = known(rater, found);
        HalfJoin join = new HalfJoin(rater);
        double[] values = new double[rater.objectives().asked().size()];
        for (int i = part; i < uppers.size(); i += PARTS) {
            UpperHalf upper = uppers.get(i);
            for (LowerHalf lower : lowers) {
                if (cancelled.getAsBoolean() || front.size() > MOST) {
                    return pairs(front);
                }
                double least = join.leastRecommendedWeight(upper, lower);
                if (join.allows(upper, lower, least)) {
                    join.values(upper, lower, least, values);
                    if (front.mayImprove(values, least) && !rater.refused().holds(join.train(upper, lower))) {
                        offer(join, new Pair(upper, lower, join), values, front);
                    }
                }
            }
        }
        return pairs(front);
    }

    private static void offer(TrainRater rater, Pair pair, NonDominated<Supplier<Train>> front) {
        offer(pair.join, pair, new double[rater.objectives().asked().size()], front);
    }

    private static void offer(HalfJoin join, Pair pair, double[] values, NonDominated<Supplier<Train>> front) {
        double weight = join.recommendedWeight(pair.upper, pair.lower);
        if (join.weightKept(pair.upper, weight) && join.teethBear(pair.upper, pair.lower, weight)) {
            join.values(pair.upper, pair.lower, weight, values);
            front.add(values, weight, pair);
        }
    }

    private static List<Pair> pairs(NonDominated<Supplier<Train>> front) {
        return front.items().stream()
                .filter(Pair.class::isInstance)
                .map(Pair.class::cast)
                .toList();
    }
}
