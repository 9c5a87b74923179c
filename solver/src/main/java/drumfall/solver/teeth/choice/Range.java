// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.choice;

/**
 * The values a figure may take.
 *
 * @param low the least
 * @param high the greatest, not below the least
 */
public record Range(double low, double high) {
    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if the ends are out of order or not finite
     */
    public Range {
        if (!(low <= high && Double.isFinite(high - low))) {
            throw new IllegalArgumentException(
                    "The range (" + low + " to " + high + ") must have its ends in order. Maybe swap them.");
        }
    }

    /** A figure that is fixed. */
    public static Range fixed(double value) {
        return new Range(value, value);
    }

    /** The value at a share of the range, 0 at its low end to 1 at its high end. */
    double at(double share) {
        return low + share * (high - low);
    }

    /** The share at which a value lies, held within 0 to 1; only ever a place to start a search from. */
    double shareOf(double value) {
        return high == low ? 0 : Math.max(0, Math.min(1, (value - low) / (high - low)));
    }
}
