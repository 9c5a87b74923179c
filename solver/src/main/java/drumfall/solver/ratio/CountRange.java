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
    /** Choices of counts on one side of the meshes; that many products take 120 megabytes. */
    private static final long MOST_CHOICES = 15_000_000;

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

    /** The counts of this range that do not pass {@code limit}; the least must be among them. */
    CountRange withMost(int limit) {
        return new CountRange(least, Math.min(most, limit));
    }

    /**
     * Checks that a search can go through every choice of a number of counts.
     *
     * @param subject what the range bounds, as the message names it
     * @param number how many counts are chosen, at least 1
     * @throws RatioException if a product of the counts can pass a long, or there are more than 15 million choices
     */
    public void requireTractable(String subject, int number) {
        String value = least + " to " + most;
        if (BigInteger.valueOf(most).pow(number).bitLength() >= Long.SIZE) {
            throw RatioException.refused(
                    subject, value, "keep the product of %d counts below 2^63".formatted(number), "lower the most");
        }
        if (choices(number).compareTo(BigInteger.valueOf(MOST_CHOICES)) > 0) {
            throw RatioException.refused(
                    subject,
                    value,
                    "leave at most %d choices of %d counts".formatted(MOST_CHOICES, number),
                    "narrow the range");
        }
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
