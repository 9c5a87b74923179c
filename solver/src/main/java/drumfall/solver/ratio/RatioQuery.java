// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

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
        wheels.requireTractable("wheel range", meshCount);
        leaves.requireTractable("leaf range", meshCount);
    }

    private static void requireWithin(String subject, int value, int most, String maybe) {
        if (value < 1 || value > most) {
            throw RatioException.refused(subject, value, "lie from 1 to " + most, maybe);
        }
    }

    /**
     * The nearest ratio alone, with as many of its trains as can be listed, no count above {@code most}; the ranges must
     * allow that.
     */
    RatioQuery nearestWithMost(int most) {
        return new RatioQuery(target, meshCount, wheels.withMost(most), leaves.withMost(most), 1, MOST_LISTED);
    }
}
