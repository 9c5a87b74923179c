// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.answers;

import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.BandPoint;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * The least running weight over the brief's bands: what builders of one train would find, each with friction and quality of
 * their own.
 *
 * <p>Every band counts as equally likely throughout and independent of the others (rectangular distributions, as JCGM
 * 101:2008 takes them where only limits are known; from memory). The trials are stratified: each band is cut into as many
 * strata as there are trials and each stratum is used once, in an order drawn from a stated seed, so that the same brief and
 * train give the same figures always.
 *
 * <p>Friction at the teeth is taken at the middle of one of {@value #LEVELS} levels, because each value asks for curves of
 * its own. The weight never falls as friction grows, so the quantiles with every trial moved to the lower and to the upper
 * edge of its level enclose the quantiles of the bands themselves; {@link Level} gives the two, and tests hold them close: some 0.5 % either way at worst.
 */
public final class WeightChance {
    /** Levels of friction at the teeth. */
    public static final int LEVELS = 80;

    /** Trials that give quantiles to about one percent: levels and strata each leave half of it. */
    public static final int USUAL_TRIALS = 10_000;

    /** Seed of the order of strata. */
    public static final long SEED = 1656;

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
        if (trials < LEVELS || trials % LEVELS != 0) {
            throw new IllegalArgumentException(
                    "The trials (%d) must be a multiple of %d. Maybe %d.".formatted(trials, LEVELS, USUAL_TRIALS));
        }
        SplittableRandom random = new SplittableRandom(SEED);
        int[] teeth = order(random, trials);
        double[] bores = strata(random, trials);
        double[] pallets = strata(random, trials);
        double[] quality = strata(random, trials);
        double[] weights = new double[trials];
        for (int i = 0; i < trials; i++) {
            int level = teeth[i] / (trials / LEVELS);
            double share = (level + place.share) / LEVELS;
            BandPoint point = new BandPoint(share, bores[i], pallets[i], quality[i]);
            weights[i] = new WeightWalk(rater.movement(point)).weigh(train).leastWeight();
        }
        Arrays.sort(weights);
        return new WeightChance(weights);
    }

    private static double[] strata(SplittableRandom random, int trials) {
        return Arrays.stream(order(random, trials))
                .mapToDouble(stratum -> (stratum + random.nextDouble()) / trials)
                .toArray();
    }

    private static int[] order(SplittableRandom random, int trials) {
        int[] order = new int[trials];
        for (int i = 0; i < trials; i++) {
            int other = random.nextInt(i + 1);
            order[i] = order[other];
            order[other] = i;
        }
        return order;
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
