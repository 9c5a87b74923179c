// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

/** How the end shake is spread about its mean. */
public sealed interface ShakeDistribution permits UniformSum, ShakeSample {
    /**
     * Chance of a deviation from the mean below a bound.
     *
     * @param deviation nm
     */
    double chanceBelow(double deviation);

    /**
     * Chance of a deviation from the mean above a bound.
     *
     * @param deviation nm
     */
    double chanceAbove(double deviation);

    /**
     * Chance of missing a band.
     *
     * @param mean end shake about which the errors are spread, nm
     * @param band what is wanted
     */
    Chance missing(double mean, ShakeBand band);
}
