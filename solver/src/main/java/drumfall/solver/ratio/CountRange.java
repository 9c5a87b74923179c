// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import java.math.BigInteger;

/**
 * The teeth or leaves allowed, both ends included.
 *
 * @param least at least 1
 * @param most at least {@code least}
 */
public record CountRange(int least, int most) {
    /**
     * Checks the ends.
     *
     * @throws RatioException if {@code least} is below 1 or the ends are crossed
     */
    public CountRange {
        if (least < 1) {
            throw RatioException.refused("least count", least, "be at least 1", "give the smallest printable pinion");
        }
        if (most < least) {
            throw RatioException.refused(
                    "most count", most, "be at least the least count (%d)".formatted(least), "swap the two bounds");
        }
    }

    /** How many counts are allowed. */
    public long size() {
        return (long) most - least + 1;
    }

    /** Whether the count is allowed. */
    public boolean contains(long count) {
        return least <= count && count <= most;
    }

    /** Ways to choose a number of counts with repeats, order disregarded: (size + n - 1) over n. */
    BigInteger choices(int number) {
        BigInteger choices = BigInteger.ONE;
        for (int chosen = 1; chosen <= number; chosen++) {
            choices = choices.multiply(BigInteger.valueOf(size() + chosen - 1)).divide(BigInteger.valueOf(chosen));
        }
        return choices;
    }
}
