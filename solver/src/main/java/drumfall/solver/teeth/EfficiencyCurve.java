// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

import java.util.Arrays;

/**
 * What a mesh passes on of the work put in, over one pitch of the driver: {@code (M2/M1) (dθ2/dθ1)} at equally spaced
 * driver angles.
 *
 * <p>The curve repeats from pitch to pitch. Values are between 0 (the mesh binds) and 1 (no friction).
 */
public final class EfficiencyCurve {
    private final double[] samples;
    private final double worst;
    private final double mean;

    private EfficiencyCurve(double[] samples) {
        this.samples = samples;
        this.worst = Arrays.stream(samples).min().orElseThrow();
        this.mean = Arrays.stream(samples).sum() / samples.length;
    }

    /**
     * A curve from its samples.
     *
     * @param samples efficiencies at equally spaced driver angles over one pitch, in the order in which they are passed,
     *     each from 0 to 1, at least one
     * @throws IllegalArgumentException if there is no sample or one is outside 0 to 1
     */
    public static EfficiencyCurve of(double... samples) {
        if (samples.length == 0) {
            throw new IllegalArgumentException("An efficiency curve must have at least 1 sample.");
        }
        for (double sample : samples) {
            if (!(sample >= 0 && sample <= 1)) {
                throw new IllegalArgumentException(
                        "The efficiency (%s) of a mesh must be from 0 to 1. Maybe the contact analysis failed."
                                .formatted(sample));
            }
        }
        return new EfficiencyCurve(samples.clone());
    }

    /** The least efficiency over the pitch. */
    public double worst() {
        return worst;
    }

    /** The work mean: work given out over one pitch for work put in. */
    public double mean() {
        return mean;
    }

    /** Number of samples over one pitch. */
    public int size() {
        return samples.length;
    }

    /**
     * One sample.
     *
     * @param index from 0 to {@link #size()} - 1
     */
    public double at(int index) {
        return samples[index];
    }

    /**
     * The least efficiency that a pendulum feels: the curve averaged with an exponentially fading memory, least value
     * over all phases.
     *
     * <p>With samples a fixed step apart the fading memory is a geometric one, {@code f' = a f + (1 - a) c} with
     * {@code a = exp(-step / memory)}. A geometric average of longer memory is a further average of the shorter one (the
     * quotient of their generating functions is {@code (1-a')/(1-a) · (1 + (a'-a) z / (1 - a' z))}, whose coefficients
     * are not negative and sum to one), so the value never falls when the memory grows: it runs from {@link #worst()} to
     * {@link #mean()} without a threshold.
     *
     * @param memory the pendulum's memory over the time of one pitch, more than 0
     * @return from {@link #worst()} to {@link #mean()}
     */
    public double felt(double memory) {
        double fading = Math.exp(-1 / (memory * samples.length));
        double fresh = 1 - fading;
        double carried = 0;
        for (double sample : samples) {
            carried = carried * fading + sample * fresh;
        }
        double felt = carried / -Math.expm1(-1 / memory);
        double least = felt;
        for (double sample : samples) {
            felt = felt * fading + sample * fresh;
            least = Math.min(least, felt);
        }
        return Math.min(Math.max(least, worst), mean);
    }
}
