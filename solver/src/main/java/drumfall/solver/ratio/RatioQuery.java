// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What to look for: the ratios nearest to a target that a number of meshes can give.
 *
 * @param target wheels over pinions, positive, at most 512 bits above and below the line
 * @param meshCount 1 to 4
 * @param wheels teeth allowed on every wheel
 * @param leaves leaves allowed on every pinion
 * @param wanted how many ratios, 1 to 10 000
 * @param trainsPerRatio how many trains to list for each ratio, 1 to 10 000
 */
public record RatioQuery(
        BigFraction target, int meshCount, CountRange wheels, CountRange leaves, int wanted, int trainsPerRatio) {
    /** The most meshes of one search; a going train has no more between drum and centre, nor after it. */
    public static final int MOST_MESHES = 4;

    private static final int MOST_LISTED = 10_000;

    /** Choices of counts on one side of the meshes; that many products take 120 megabytes. */
    private static final long MOST_CHOICES = 15_000_000;

    /**
     * Checks that the whole search can be carried through exactly.
     *
     * @throws RatioException if a number is out of range, a product of counts can pass a long, or there are more than 15
     *     million choices of wheels or of pinions
     */
    public RatioQuery {
        target = Targets.admitted(target);
        requireWithin("meshCount", meshCount, MOST_MESHES, "split the train");
        requireWithin("number of wanted ratios", wanted, MOST_LISTED, "ask for the best few");
        requireWithin("number of trains per ratio", trainsPerRatio, MOST_LISTED, "ask for the first few");
        requireTractable("wheel range", wheels, meshCount);
        requireTractable("leaf range", leaves, meshCount);
    }

    private static void requireWithin(String subject, int value, int most, String maybe) {
        if (value < 1 || value > most) {
            throw RatioException.refused(subject, value, "lie from 1 to " + most, maybe);
        }
    }

    private static void requireTractable(String subject, CountRange range, int meshCount) {
        String value = range.least() + " to " + range.most();
        if (BigInteger.valueOf(range.most()).pow(meshCount).bitLength() >= Long.SIZE) {
            throw RatioException.refused(
                    subject, value, "keep the product of %d counts below 2^63".formatted(meshCount), "lower the most");
        }
        if (range.choices(meshCount).compareTo(BigInteger.valueOf(MOST_CHOICES)) > 0) {
            throw RatioException.refused(
                    subject,
                    value,
                    "leave at most %d choices of %d counts".formatted(MOST_CHOICES, meshCount),
                    "narrow the range");
        }
    }
}
