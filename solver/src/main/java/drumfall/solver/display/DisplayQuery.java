// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.display;

import drumfall.solver.ratio.CountRange;
import drumfall.solver.ratio.RatioException;
import drumfall.solver.ratio.RatioQuery;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What to look for: the trains that drive a display with the least error.
 *
 * @param display what is shown
 * @param arbor the arbor that drives it
 * @param meshCount 1 to 4; an idler is no mesh of its own here, as it leaves the ratio alone
 * @param drivers teeth allowed on every driver
 * @param followers teeth allowed on every follower
 * @param wanted how many different speeds, 1 to 10 000
 * @param trainsPerSpeed how many trains to list for each speed, 1 to 10 000
 */
public record DisplayQuery(
        Display display,
        DrivingArbor arbor,
        int meshCount,
        CountRange drivers,
        CountRange followers,
        int wanted,
        int trainsPerSpeed) {
    /**
     * Checks that the whole search can be carried through exactly, and that the target is within reach.
     *
     * @throws RatioException if a number is out of range, there are too many choices to go through, or even the extreme
     *     counts leave the display too fast or too slow
     */
    public DisplayQuery {
        if (meshCount < 1 || meshCount > RatioQuery.MOST_MESHES) {
            throw RatioException.refused(
                    "number of meshes",
                    meshCount,
                    "lie from 1 to " + RatioQuery.MOST_MESHES,
                    "drive from a slower arbor");
        }
        drivers.requireTractable("range of drivers", meshCount);
        followers.requireTractable("range of followers", meshCount);
        RatioQuery checked = ratios(display, arbor, meshCount, drivers, followers, wanted, trainsPerSpeed);
        requireReach(checked.target().reciprocal(), meshCount, drivers, followers);
    }

    private static void requireReach(BigFraction target, int meshCount, CountRange drivers, CountRange followers) {
        BigFraction least = BigFraction.of(followers.least(), drivers.most()).pow(meshCount);
        BigFraction most = BigFraction.of(followers.most(), drivers.least()).pow(meshCount);
        if (target.compareTo(least) < 0 || target.compareTo(most) > 0) {
            throw RatioException.refused(
                    "number of turns of the arbor for one of the display",
                    decimal(target),
                    "lie from %s to %s, the reach of the counts in their meshes (%d)"
                            .formatted(decimal(least), decimal(most), meshCount),
                    "change the number of meshes, the counts or the arbor");
        }
    }

    private static String decimal(BigFraction value) {
        return String.format(Locale.ROOT, "%.6g", value.doubleValue());
    }

    /** Turns of the arbor for one of the display, exact: the target of the trade's reckoning, followers over drivers. */
    public BigFraction arborTurns() {
        return arborTurns(display, arbor);
    }

    private static BigFraction arborTurns(Display display, DrivingArbor arbor) {
        return display.secondsPerTurn().divide(arbor.secondsPerTurn());
    }

    /**
     * Whether the display turns clockwise seen from the dial, with these meshes and no idler; one idler in any mesh turns it
     * the other way and leaves the ratio as it is.
     */
    public boolean clockwise() {
        return arbor.clockwise() == (meshCount % 2 == 0);
    }

    /** The search for turns of the display: drivers over followers, so that distance from the target is error of speed. */
    RatioQuery ratios() {
        return ratios(display, arbor, meshCount, drivers, followers, wanted, trainsPerSpeed);
    }

    private static RatioQuery ratios(
            Display display,
            DrivingArbor arbor,
            int meshCount,
            CountRange drivers,
            CountRange followers,
            int wanted,
            int trainsPerSpeed) {
        BigFraction turns = arborTurns(display, arbor).reciprocal();
        return new RatioQuery(turns, meshCount, drivers, followers, wanted, trainsPerSpeed);
    }
}
