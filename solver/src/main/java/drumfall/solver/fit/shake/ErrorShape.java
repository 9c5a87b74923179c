// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

/** How the error of one piece is spread over its tolerance; all shapes are symmetric about its middle. */
public enum ErrorShape {
    /** Every value in the tolerance is as likely as any other: variance a third of the half width squared. */
    UNIFORM(1.0 / 3),
    /** Likeliest in the middle, falling straight to both ends: variance a sixth of the half width squared. */
    TRIANGULAR(1.0 / 6),
    /** Normal with a standard deviation of a third of the half width, cut off at the ends of the tolerance. */
    TRUNCATED_NORMAL(ErrorShape.truncatedVariance());

    static final double CUT = 3;

    private final double variance;

    ErrorShape(double variance) {
        this.variance = variance;
    }

    /** Variance for a half width of 1. */
    double variance() {
        return variance;
    }

    /** {@code (1 − 2 c φ(c) / P(|Z| < c)) / c²} for a cut at c standard deviations. */
    private static double truncatedVariance() {
        double density = StrictMath.exp(-CUT * CUT / 2) / StrictMath.sqrt(2 * Math.PI);
        return (1 - 2 * CUT * density / Normal.within(CUT)) / (CUT * CUT);
    }
}
