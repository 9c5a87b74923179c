// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import java.util.SplittableRandom;

/** Seeded random errors; only the generator's raw bits are taken from the JDK, so a sample is the same everywhere. */
final class ErrorSource {
    private static final int SPARE_BITS = Long.SIZE - 53;
    private static final double BIT = 0x1.0p-53;

    private final SplittableRandom bits;

    ErrorSource(long seed) {
        bits = new SplittableRandom(seed);
    }

    /** One movement's deviation from the mean, nm. */
    double deviation(ArborStack stack) {
        double sum = 0;
        for (Contribution part : stack.contributions()) {
            for (int piece = 0; piece < part.count(); piece++) {
                sum += part.halfWidth() * error(part.shape());
            }
        }
        return sum;
    }

    /** An error of half width 1. */
    private double error(ErrorShape shape) {
        return switch (shape) {
            case UNIFORM -> 2 * share() - 1;
            case TRIANGULAR -> share() + share() - 1;
            case TRUNCATED_NORMAL -> truncatedNormal();
        };
    }

    /** Draws anew beyond the cut; polar method (Marsaglia and Bray 1964). */
    private double truncatedNormal() {
        while (true) {
            double x = 2 * share() - 1;
            double y = 2 * share() - 1;
            double square = x * x + y * y;
            if (square < 1 && square > 0) {
                double normal = x * StrictMath.sqrt(-2 * StrictMath.log(square) / square);
                if (Math.abs(normal) <= ErrorShape.CUT) {
                    return normal / ErrorShape.CUT;
                }
            }
        }
    }

    /** Uniform over 0 to 1. */
    private double share() {
        return (bits.nextLong() >>> SPARE_BITS) * BIT;
    }
}
