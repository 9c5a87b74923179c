// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import java.math.BigInteger;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The two counts of one mesh of a going train: the wheel drives, the pinion is driven.
 *
 * @param toothCount teeth of the wheel, at least 1
 * @param leafCount leaves of the pinion, at least 1
 */
public record WheelAndPinion(int toothCount, int leafCount) {
    /**
     * Checks the counts.
     *
     * @throws RatioException if a count is below 1
     */
    public WheelAndPinion {
        requirePositive("toothCount", toothCount);
        requirePositive("leafCount", leafCount);
    }

    private static void requirePositive(String subject, int count) {
        if (count < 1) {
            throw RatioException.refused(subject, count, "be at least 1", "swap in the wheel that was meant");
        }
    }

    /** Turns of the pinion for one turn of the wheel, {@code z / p}, exact. */
    public BigFraction ratio() {
        return BigFraction.of(toothCount, leafCount);
    }

    /** Whether every leaf meets every tooth before a pair repeats: {@code gcd(z, p) = 1}, the hunting tooth. */
    public boolean hunts() {
        return BigInteger.valueOf(toothCount).gcd(BigInteger.valueOf(leafCount)).equals(BigInteger.ONE);
    }

    /** The exact product of wheels over pinions; 1 for no meshes. */
    public static BigFraction product(List<WheelAndPinion> meshes) {
        return meshes.stream().map(WheelAndPinion::ratio).reduce(BigFraction.ONE, BigFraction::multiply);
    }

    /** The counts as a clockmaker writes them, for example {@code 96/8}. */
    @Override
    public String toString() {
        return toothCount + "/" + leafCount;
    }
}
