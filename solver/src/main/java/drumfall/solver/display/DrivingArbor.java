// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.display;

import drumfall.solver.ratio.RatioException;
import drumfall.solver.train.GoingTrain;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The arbor of the movement that a display is driven from.
 *
 * @param turnsPerHour positive, exact
 * @param clockwise which way it turns, seen from the dial
 */
public record DrivingArbor(BigFraction turnsPerHour, boolean clockwise) {
    /** The centre arbor: once an hour, as the minute hand does. */
    public static final DrivingArbor CENTRE = new DrivingArbor(BigFraction.ONE, true);

    /** The hour wheel: once in twelve hours, as the hour hand does. */
    public static final DrivingArbor HOUR_WHEEL = new DrivingArbor(BigFraction.of(1, 12), true);

    private static final int SECONDS_PER_HOUR = 3600;

    /**
     * Checks the speed.
     *
     * @throws RatioException if the speed is not positive
     */
    public DrivingArbor {
        if (turnsPerHour.signum() <= 0) {
            throw RatioException.refused(
                    "speed of the driving arbor",
                    turnsPerHour + " turns an hour",
                    "be more than 0 turns an hour",
                    "take the centre arbor, which turns once");
        }
    }

    /**
     * An arbor of a going train.
     *
     * @param train whose hands turn clockwise
     * @param arbor number of the arbor, 0 for the drum arbor
     */
    public static DrivingArbor of(GoingTrain train, int arbor) {
        return new DrivingArbor(train.hoursPerTurn(arbor).reciprocal(), train.clockwise(arbor));
    }

    /** Seconds of one turn, exact. */
    public BigFraction secondsPerTurn() {
        return BigFraction.of(SECONDS_PER_HOUR).divide(turnsPerHour);
    }
}
