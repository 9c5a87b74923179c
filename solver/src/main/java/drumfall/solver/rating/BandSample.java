// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Places in the brief's bands where builders may find themselves, each with friction and quality of their own.
 *
 * <p>Every band counts as equally likely throughout and independent of the others (rectangular distributions, as JCGM
 * 101:2008 takes them where only limits are known; from memory). The trials are stratified: each band is cut into as many
 * strata as there are trials and each stratum is used once, in an order drawn from a stated seed, so that the same number of
 * trials gives the same places always. Friction at the teeth is taken within one of {@value #LEVELS} levels, because each
 * value asks for curves of its own.
 */
public final class BandSample {
    /** Levels of friction at the teeth. */
    public static final int LEVELS = 80;

    /** Seed of the order of strata. */
    public static final long SEED = 1656;

    private BandSample() {}

    /**
     * The places.
     *
     * @param trials a multiple of {@link #LEVELS}
     * @param placeInLevel where within its level the friction at the teeth is taken, from 0 to 1
     * @throws IllegalArgumentException if the trials cannot be shared out evenly
     */
    public static List<BandPoint> of(int trials, double placeInLevel) {
        if (trials < LEVELS || trials % LEVELS != 0) {
            throw new IllegalArgumentException("The trials (%d) must be a multiple of %d. Maybe %d."
                    .formatted(trials, LEVELS, LEVELS * Math.max(1, Math.round((float) trials / LEVELS))));
        }
        SplittableRandom random = new SplittableRandom(SEED);
        int[] teeth = order(random, trials);
        double[] bores = strata(random, trials);
        double[] pallets = strata(random, trials);
        double[] quality = strata(random, trials);
        int inLevel = trials / LEVELS;
        return IntStream.range(0, trials)
                .mapToObj(i -> {
                    int level = teeth[i] / inLevel;
                    return new BandPoint((level + placeInLevel) / LEVELS, bores[i], pallets[i], quality[i]);
                })
                .toList();
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
}
