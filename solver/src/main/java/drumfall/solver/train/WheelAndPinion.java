// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import java.math.BigInteger;
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
     * @throws IllegalArgumentException if a count is below 1
     */
    public WheelAndPinion {
        requireCount(toothCount, "toothCount");
        requireCount(leafCount, "leafCount");
    }

    /** Turns of the pinion for one turn of the wheel, {@code z / p}. */
    public BigFraction ratio() {
        return BigFraction.of(toothCount, leafCount);
    }

    /** Whether every leaf meets every tooth in turn: {@code gcd(z, p) = 1}, the hunting tooth. */
    public boolean hunts() {
        return BigInteger.valueOf(toothCount).gcd(BigInteger.valueOf(leafCount)).intValueExact() == 1;
    }

    /** The counts as a clockmaker writes them, for example {@code 96/8}. */
    @Override
    public String toString() {
        return toothCount + "/" + leafCount;
    }

    private static void requireCount(int count, String name) {
        if (count < 1) {
            throw new IllegalArgumentException(
                    "The %s (%d) of a mesh must be at least 1 tooth. Maybe the counts are swapped or missing."
                            .formatted(name, count));
        }
    }
}
