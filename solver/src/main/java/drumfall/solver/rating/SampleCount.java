// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Counts at how many places in the bands a weight is enough, without reckoning the least weight at each.
 *
 * <p>The least weight never falls where a place is rougher in everything: the need at the escape wheel rises with the
 * pendulum's loss and with friction at the pallets, its memory shortens, a shorter memory feels less of a mesh
 * ({@link drumfall.solver.teeth.EfficiencyCurve#felt}), and a mesh and an arbor pass on less with more friction. So a place
 * rougher in everything than one where the weight is too light needs more too, and one smoother in everything than one where
 * it is enough needs no more. Only places where the weight is off by more than rounding speak for others; the count is that
 * of all places reckoned one by one.
 */
final class SampleCount {
    /** Far above the rounding of a walk to the weight, far below what a place differs from the next. */
    private static final double ROUNDING = 1e-9;

    private final List<BandPoint> points;
    private final BitSet[] rougher;
    private final BitSet[] smoother;

    /**
     * The places to count.
     *
     * @param points in any order
     */
    SampleCount(List<BandPoint> points) {
        this.points = mostTellingFirst(points);
        this.rougher = new BitSet[points.size()];
        this.smoother = new BitSet[points.size()];
        for (int i = 0; i < points.size(); i++) {
            BandPoint point = this.points.get(i);
            rougher[i] = all(other -> atLeastAsRough(other, point));
            smoother[i] = all(other -> atLeastAsRough(point, other));
        }
    }

    /** Places that split the others most evenly come first. */
    private static List<BandPoint> mostTellingFirst(List<BandPoint> points) {
        Map<BandPoint, Long> telling = new HashMap<>();
        for (BandPoint point : points) {
            long above = points.stream()
                    .filter(other -> atLeastAsRough(other, point))
                    .count();
            long below = points.stream()
                    .filter(other -> atLeastAsRough(point, other))
                    .count();
            telling.put(point, -Math.min(above, below));
        }
        return points.stream().sorted(Comparator.comparing(telling::get)).toList();
    }

    private BitSet all(Predicate<BandPoint> asked) {
        BitSet found = new BitSet(points.size());
        IntStream.range(0, points.size()).filter(i -> asked.test(points.get(i))).forEach(found::set);
        return found;
    }

    private static boolean atLeastAsRough(BandPoint one, BandPoint other) {
        return one.teeth() >= other.teeth()
                && one.bores() >= other.bores()
                && one.pallets() >= other.pallets()
                && one.quality() >= other.quality();
    }

    /** The places in the order in which they are numbered. */
    List<BandPoint> points() {
        return points;
    }

    /**
     * Whether a weight is enough everywhere because it is where everything is at its roughest.
     *
     * @param weight kg
     * @param roughest least weight there, kg
     */
    static boolean sparesAll(double weight, double roughest) {
        return roughest * (1 + ROUNDING) <= weight;
    }

    /**
     * The places by how much they ask of one train, the least first. What they ask of others goes much the same way, so that
     * it tells where to look first; the count does not depend on it.
     *
     * @param least the least weight at a place, by its number, kg
     */
    int[] ranked(IntToDoubleFunction least) {
        double[] asked = IntStream.range(0, points.size()).mapToDouble(least).toArray();
        return IntStream.range(0, points.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> asked[i]))
                .mapToInt(i -> i)
                .toArray();
    }

    /**
     * At how many places a weight is enough.
     *
     * @param least the least weight at a place, by its number, kg
     * @param weight kg, finite
     */
    int of(IntToDoubleFunction least, double weight) {
        Tally tally = new Tally(least, weight);
        for (int i = 0; i >= 0; i = tally.open.nextSetBit(i)) {
            tally.ask(i);
        }
        return tally.runs;
    }

    /**
     * Whether a weight is enough at so many places. Those about whom it is are asked first: where it is not enough for one of
     * them, it is not for all that are rougher, and the other way round.
     *
     * @param count how many, from 1 to all
     * @param ranked the places, as {@link #ranked} has them
     * @param least the least weight at a place, by its number, kg
     * @param weight kg, finite
     */
    boolean atLeast(int count, int[] ranked, IntToDoubleFunction least, double weight) {
        Tally tally = new Tally(least, weight);
        int most = points.size() - count;
        for (int step = 0; step < points.size(); step++) {
            for (int place : new int[] {count - 1 - step, count + step}) {
                if (place >= 0 && place < points.size() && tally.open.get(ranked[place])) {
                    tally.ask(ranked[place]);
                    if (tally.runs >= count || tally.fails > most) {
                        return tally.runs >= count;
                    }
                }
            }
        }
        throw new IllegalStateException("All places are settled and yet it is open whether they are enough.");
    }

    /** What is settled so far. */
    private final class Tally {
        private final IntToDoubleFunction least;
        private final double weight;
        private final BitSet open = new BitSet(points.size());
        private int runs;
        private int fails;

        Tally(IntToDoubleFunction least, double weight) {
            this.least = least;
            this.weight = weight;
            open.set(0, points.size());
        }

        void ask(int place) {
            double asked = least.applyAsDouble(place);
            boolean enough = asked <= weight;
            boolean clear = enough ? asked * (1 + ROUNDING) <= weight : asked > weight * (1 + ROUNDING);
            int before = open.cardinality();
            if (clear) {
                open.andNot(enough ? smoother[place] : rougher[place]);
            }
            open.clear(place);
            int settled = before - open.cardinality();
            runs += enough ? settled : 0;
            fails += enough ? 0 : settled;
        }
    }
}
