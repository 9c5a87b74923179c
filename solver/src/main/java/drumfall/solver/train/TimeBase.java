// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import drumfall.solver.ratio.WheelAndPinion;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Which arbor of a train keeps a known time: for a clock with a centre arbor, the centre arbor and one hour.
 *
 * <p>A clock without an hourly arbor is given by whichever arbor its dial is driven from, for example a great wheel that
 * carries the hand of a four-hour dial.
 *
 * @param arbor number of the arbor, 0 for the drum arbor
 * @param hoursPerTurn hours for one turn of that arbor, positive
 */
public record TimeBase(int arbor, BigFraction hoursPerTurn) {
    /**
     * Checks the arbor and its period.
     *
     * @throws IllegalArgumentException if the arbor is negative or the period is not positive
     */
    public TimeBase {
        if (arbor < 0) {
            throw new IllegalArgumentException(
                    "The arbor (%d) that keeps time must be 0, the drum arbor, or more.".formatted(arbor));
        }
        if (hoursPerTurn.signum() <= 0) {
            throw new IllegalArgumentException(
                    "The hoursPerTurn (%s) of arbor %d must be more than 0 h.".formatted(hoursPerTurn, arbor));
        }
    }

    /**
     * The ordinary case: one arbor turns once an hour and carries the minute hand.
     *
     * @param arbor number of the centre arbor
     */
    public static TimeBase hourly(int arbor) {
        return new TimeBase(arbor, BigFraction.ONE);
    }

    /**
     * An arbor whose pinion of report drives a dial wheel that turns once in twelve hours.
     *
     * @param arbor number of the arbor that carries the pinion of report
     * @param dialWork the pair, driver first: the arbor turns once in {@code 12 p / q} hours
     */
    public static TimeBase twelveHourDial(int arbor, WheelAndPinion dialWork) {
        return new TimeBase(
                arbor, BigFraction.of(12).multiply(dialWork.toothCount()).divide(dialWork.leafCount()));
    }
}
