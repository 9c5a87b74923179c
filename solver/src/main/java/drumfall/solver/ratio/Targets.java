// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Admits target ratios: positive, and small enough for every step after to be exact and quick. */
final class Targets {
    /** 150 decimal digits; it also keeps every target well inside the range of a double. */
    static final int MOST_BITS = 512;

    private Targets() {}

    /** The target with a positive denominator; the fraction type may carry a sign in either half. */
    static BigFraction admitted(BigFraction target) {
        if (target.signum() <= 0) {
            throw RatioException.refused("target ratio", target, "be positive", "give driver turns over driven turns");
        }
        BigInteger above = target.getNumerator().abs();
        BigInteger below = target.getDenominator().abs();
        if (Math.max(above.bitLength(), below.bitLength()) > MOST_BITS) {
            String size = Math.max(above.bitLength(), below.bitLength()) + " bits";
            throw RatioException.refused(
                    "target ratio", size, "fit " + MOST_BITS + " bits above and below the line", "give fewer decimals");
        }
        return BigFraction.of(above, below);
    }

    static BigFraction admitted(double target) {
        if (!Double.isFinite(target) || target <= 0) {
            throw RatioException.refused(
                    "target ratio", target, "be positive and finite", "give driver turns over driven turns");
        }
        return admitted(BigFraction.from(target));
    }
}
