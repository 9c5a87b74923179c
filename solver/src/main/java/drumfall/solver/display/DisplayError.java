// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.display;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How far a display goes wrong.
 *
 * @param display what should be shown
 * @param rate true speed over wanted speed, less 1, exact, more than -1; positive where the display gains
 */
public record DisplayError(Display display, BigFraction rate) {
    private static final int SECONDS_PER_DAY = 86_400;

    /**
     * The error of a train that is given.
     *
     * @param train between the arbor and the display
     */
    public static DisplayError of(Display display, DrivingArbor arbor, DisplayTrain train) {
        BigFraction wanted = arbor.secondsPerTurn().divide(display.secondsPerTurn());
        return new DisplayError(display, train.turns().divide(wanted).subtract(1));
    }

    /** Seconds of one turn of the display, exact. */
    public BigFraction secondsPerTurn() {
        return display.secondsPerTurn().divide(rate.add(1));
    }

    /** What the display gains in a day, in seconds of the cycle shown, exact; negative where it loses. */
    public BigFraction secondsADay() {
        return rate.multiply(SECONDS_PER_DAY);
    }

    /** What the display gains in one cycle, in seconds, exact; negative where it loses. */
    public BigFraction secondsACycle() {
        return rate.multiply(display.cycleSeconds());
    }

    /** Days of 86 400 s until the error can be seen, exact; none for a display without error. */
    public Optional<BigFraction> daysUntil(Resolution resolution) {
        return rate.isZero()
                ? Optional.empty()
                : Optional.of(resolution.seconds(display).divide(secondsADay().abs()));
    }
}
