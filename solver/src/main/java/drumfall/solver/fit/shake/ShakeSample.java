// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import drumfall.solver.fit.FitException;
import java.util.Arrays;

/** A Monte Carlo sample of an arbor's end shake (method after JCGM 101:2008, clause 7). */
public final class ShakeSample implements ShakeDistribution {
    private final double[] deviations;
    private final Sampling sampling;

    private ShakeSample(double[] deviations, Sampling sampling) {
        this.deviations = deviations;
        this.sampling = sampling;
    }

    /**
     * Draws a sample.
     *
     * @param stack the stack
     * @param sampling how
     */
    public static ShakeSample of(ArborStack stack, Sampling sampling) {
        ErrorSource source = new ErrorSource(sampling.seed());
        double[] drawn = new double[sampling.trials()];
        for (int i = 0; i < drawn.length; i++) {
            boolean mirrored = sampling.antithetic() && i % 2 == 1;
            drawn[i] = mirrored ? -drawn[i - 1] : source.deviation(stack);
        }
        Arrays.sort(drawn);
        return new ShakeSample(drawn, sampling);
    }

    /** How it was drawn. */
    public Sampling sampling() {
        return sampling;
    }

    /**
     * The deviation from the mean that a share of the sample stays below, nm (JCGM 101:2008, 7.7: the sorted values).
     *
     * @param share more than 0, less than 1
     * @throws FitException if the share is out of range
     */
    public double quantile(double share) {
        FitException.requireNumber("share", "a quantile", share, Math.ulp(0.5), 1 - Math.ulp(0.5), "of the sample");
        return deviations[(int) (share * deviations.length)];
    }

    /** Mean of the sampled deviations, nm; near 0, exactly 0 up to rounding if antithetic. */
    public double mean() {
        return Arrays.stream(deviations).sum() / deviations.length;
    }

    /** Standard deviation of the sample, nm. */
    public double deviation() {
        double mean = mean();
        double squares =
                Arrays.stream(deviations).map(d -> (d - mean) * (d - mean)).sum();
        return Math.sqrt(squares / (deviations.length - 1));
    }

    @Override
    public double chanceBelow(double deviation) {
        return (double) countBelow(deviation) / deviations.length;
    }

    @Override
    public double chanceAbove(double deviation) {
        return 1 - (double) countBelow(Math.nextUp(deviation)) / deviations.length;
    }

    /**
     * Chance of missing a band, with {@code √(p (1 − p) / n)} as the bound of its standard error: n counts the independent
     * draws, which is an upper bound for antithetic pairs since the correlation of two mirrored hits is at most 1.
     */
    @Override
    public Chance missing(double mean, ShakeBand band) {
        double below = chanceBelow(band.least() - mean);
        double above = chanceAbove(band.most() - mean);
        double outside = below + above;
        double error = Math.sqrt(Math.max(0, outside * (1 - outside)) / sampling.independent());
        return new Chance(below, above, error, false);
    }

    private int countBelow(double bound) {
        int low = 0;
        int high = deviations.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (deviations[middle] < bound) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
