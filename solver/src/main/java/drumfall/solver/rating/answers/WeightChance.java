// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.answers;

import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.BandSample;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.Arrays;

/**
 * The least running weight over the brief's bands: what builders of one train would find, each with friction and quality of
 * their own.
 *
 * <p>The trials are those of {@link BandSample}, so that the same brief and train give the same figures always.
 *
 * <p>Friction at the teeth is taken at the middle of one of {@value #LEVELS} levels, because each value asks for curves of
 * its own. The weight never falls as friction grows, so the quantiles with every trial moved to the lower and to the upper
 * edge of its level enclose the quantiles of the bands themselves; {@link Level} gives the two, and tests hold them close: some 0.5 % either way at worst.
 */
public final class WeightChance {
    /** Levels of friction at the teeth. */
    public static final int LEVELS = BandSample.LEVELS;

    /** Trials that give quantiles to about one percent: levels and strata each leave half of it. */
    public static final int USUAL_TRIALS = 10_000;

    /** Seed of the order of strata. */
    public static final long SEED = BandSample.SEED;

    private final double[] sorted;

    private WeightChance(double[] sorted) {
        this.sorted = sorted;
    }

    /** Where within its level the friction at the teeth is taken. */
    public enum Level {
        /** Lower edge: quantiles not above the true ones. */
        LOWER(0),
        /** Middle. */
        MIDDLE(0.5),
        /** Upper edge: quantiles not below the true ones. */
        UPPER(1);

        private final double share;

        Level(double share) {
            this.share = share;
        }
    }

    /**
     * The weights of a train over the bands.
     *
     * @param rater rates against the brief
     * @param train the train
     * @param trials a multiple of {@link #LEVELS}
     * @throws IllegalArgumentException if the trials cannot be shared out evenly
     */
    public static WeightChance of(TrainRater rater, Train train, int trials) {
        return of(rater, train, trials, Level.MIDDLE);
    }

    static WeightChance of(TrainRater rater, Train train, int trials, Level place) {
        double[] weights = BandSample.of(trials, place.share).stream()
                .mapToDouble(point ->
                        new WeightWalk(rater.movement(point)).weigh(train).leastWeight())
                .toArray();
        Arrays.sort(weights);
        return new WeightChance(weights);
    }

    /** Number of trials. */
    public int trials() {
        return sorted.length;
    }

    /**
     * The weight that a share of builders need at most.
     *
     * @param share from more than 0 to 1
     * @return kg; infinite if no weight does for so many
     */
    public double quantile(double share) {
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("The share (%s) must be more than 0 and at most 1.".formatted(share));
        }
        return sorted[(int) Math.ceil(share * sorted.length) - 1];
    }

    /**
     * The share of builders whose clock a weight keeps going.
     *
     * @param weight kg
     */
    public double thatRun(double weight) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] <= weight) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return (double) low / sorted.length;
    }
}
