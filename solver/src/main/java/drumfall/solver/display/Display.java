// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.display;

import drumfall.solver.quantity.Quantity;
import drumfall.solver.ratio.RatioException;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a hand or a disc shows: a cycle that comes round again, one or more times in a turn.
 *
 * <p>A moon disc behind an opening of half a turn carries two moons and turns once in two months, so that one sets as the
 * other rises (common practice, no source).
 *
 * @param cycleSeconds length of one cycle in seconds, positive, exact
 * @param cyclesPerTurn 1 to 100; 1 for a hand, 2 for a disc of two moons
 */
public record Display(BigFraction cycleSeconds, int cyclesPerTurn) {
    private static final int MOST_CYCLES = 100;

    /**
     * Checks both numbers.
     *
     * @throws RatioException if the cycle is not positive or the number of cycles out of range
     */
    public Display {
        if (cycleSeconds.signum() <= 0) {
            throw RatioException.refused(
                    "length of the cycle", cycleSeconds + " s", "be more than 0 s", "name a cycle or type its length");
        }
        if (cyclesPerTurn < 1 || cyclesPerTurn > MOST_CYCLES) {
            throw RatioException.refused(
                    "number of cycles in a turn", cyclesPerTurn, "lie from 1 to " + MOST_CYCLES, "take 1, for a hand");
        }
    }

    /** A cycle of the sky. */
    public static Display of(KnownCycle cycle, int cyclesPerTurn) {
        return new Display(cycle.seconds(), cyclesPerTurn);
    }

    /**
     * A cycle of any length.
     *
     * @param cycle a time, positive
     */
    public static Display of(Quantity cycle, int cyclesPerTurn) {
        return new Display(cycle.exactIn("s"), cyclesPerTurn);
    }

    /** Seconds of one turn, exact. */
    public BigFraction secondsPerTurn() {
        return cycleSeconds.multiply(cyclesPerTurn);
    }
}
