// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import java.math.BigInteger;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A wheel and the pinion it turns.
 *
 * @param toothCount teeth of the wheel, at least 1
 * @param leafCount leaves of the pinion, at least 1
 */
public record ToothPair(int toothCount, int leafCount) {
    /**
     * Checks the counts.
     *
     * @throws RatioException if a count is below 1
     */
    public ToothPair {
        requirePositive("toothCount", toothCount);
        requirePositive("leafCount", leafCount);
    }

    private static void requirePositive(String subject, int count) {
        if (count < 1) {
            throw RatioException.refused(subject, count, "be at least 1", "swap in the wheel that was meant");
        }
    }

    /** Pinion turns for one turn of the wheel, exact. */
    public BigFraction ratio() {
        return BigFraction.of(toothCount, leafCount);
    }

    /** Whether every leaf meets every tooth before a pair repeats: the counts have no common divisor but 1. */
    public boolean isHunting() {
        return BigInteger.valueOf(toothCount).gcd(BigInteger.valueOf(leafCount)).equals(BigInteger.ONE);
    }

    /** The exact product of wheels over pinions; 1 for no pairs. */
    public static BigFraction product(List<ToothPair> pairs) {
        return pairs.stream().map(ToothPair::ratio).reduce(BigFraction.ONE, BigFraction::multiply);
    }
}
