// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The end shake of one arbor, with all that it follows from.
 *
 * @param stack what stands between the plates
 * @param band what is wanted
 * @param temperatures of the room
 * @param sample the Monte Carlo distribution
 * @param exact the exact distribution, if there is one
 * @param change the change of one part that helps most, if any helps
 */
public record EndShake(
        ArborStack stack,
        ShakeBand band,
        Temperatures temperatures,
        ShakeSample sample,
        Optional<UniformSum> exact,
        Optional<LayerChange> change) {
    /**
     * Works out the end shake of an arbor.
     *
     * @param stack what stands between the plates
     * @param band what is wanted
     * @param temperatures of the room
     * @param sampling how to draw the sample
     */
    public static EndShake of(ArborStack stack, ShakeBand band, Temperatures temperatures, Sampling sampling) {
        ShakeSample sample = ShakeSample.of(stack, sampling);
        Optional<UniformSum> exact = UniformSum.of(stack);
        EndShake plain = new EndShake(stack, band, temperatures, sample, exact, Optional.empty());
        return new EndShake(stack, band, temperatures, sample, exact, LayerAdvice.of(plain));
    }

    /** The distribution that chances are taken from: the exact one if there is one. */
    public ShakeDistribution distribution() {
        return exact.isPresent() ? exact.get() : sample;
    }

    /**
     * Mean end shake at a temperature, nm.
     *
     * @param temperature °C
     */
    public double meanAt(double temperature) {
        return stack.mean() + stack.drift() * (temperature - temperatures.fitted());
    }

    /**
     * Chance of missing the band at a temperature.
     *
     * @param temperature °C
     */
    public Chance chanceAt(double temperature) {
        return distribution().missing(meanAt(temperature), band);
    }

    /**
     * The greatest chance of missing the band within the room's temperatures.
     *
     * <p>It stands at an end of the range: all error densities are log-concave, so is their convolution, and the chance to
     * hit a band is then quasi-concave in the mean.
     */
    public Chance chance() {
        return Stream.of(temperatures.fitted(), temperatures.coldest(), temperatures.hottest())
                .map(this::chanceAt)
                .max(Comparator.comparingDouble(Chance::outside))
                .orElseThrow();
    }

    /** Least end shake over all errors and temperatures, nm. */
    public double least() {
        return stack.least() + Math.min(drift(temperatures.coldest()), drift(temperatures.hottest()));
    }

    /** Most end shake over all errors and temperatures, nm. */
    public double most() {
        return stack.most() + Math.max(drift(temperatures.coldest()), drift(temperatures.hottest()));
    }

    /** The same arbor with other heights; the errors of parts do not depend on their heights, so the sample stays. */
    EndShake withStack(ArborStack changed) {
        return new EndShake(changed, band, temperatures, sample, exact, Optional.empty());
    }

    private double drift(double temperature) {
        return stack.drift() * (temperature - temperatures.fitted());
    }
}
