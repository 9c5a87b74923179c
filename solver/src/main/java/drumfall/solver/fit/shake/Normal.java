// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

/** The standard normal distribution. */
final class Normal {
    private static final double CERTAIN = 9;

    private Normal() {}

    /**
     * {@code P(|Z| < z) = erf(z/√2)}, by the series {@code 2 φ(z) Σ z^(2n+1) / (1·3·5…(2n+1))}; all terms are positive, so
     * nothing cancels (Abramowitz and Stegun, <i>Handbook of Mathematical Functions</i>, 26.2.11).
     *
     * @param z not negative
     */
    static double within(double z) {
        if (z >= CERTAIN) {
            return 1;
        }
        double term = z;
        double sum = 0;
        for (int odd = 3; sum + term != sum; odd += 2) {
            sum += term;
            term *= z * z / odd;
        }
        return Math.min(1, 2 * sum * StrictMath.exp(-z * z / 2) / StrictMath.sqrt(2 * Math.PI));
    }
}
