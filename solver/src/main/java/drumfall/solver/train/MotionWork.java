// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The motion work: the cannon pinion turns the minute wheel, the minute pinion turns the hour wheel.
 *
 * <p>It steps the speed down, so its wheels are driven. A right one gives exactly twelve turns of the cannon pinion to
 * one of the hour wheel; other counts may be written down, and {@link #twelve()} says that they are wrong.
 *
 * @param cannonPinion leaves of the cannon pinion, at least 1
 * @param minuteWheel teeth of the minute wheel, at least 1
 * @param minutePinion leaves of the minute pinion, at least 1
 * @param hourWheel teeth of the hour wheel, at least 1
 */
public record MotionWork(int cannonPinion, int minuteWheel, int minutePinion, int hourWheel) {
    private static final BigFraction TWELVE = BigFraction.of(12);

    /**
     * Checks the counts.
     *
     * @throws IllegalArgumentException if a count is below 1
     */
    public MotionWork {
        if (Math.min(Math.min(cannonPinion, minuteWheel), Math.min(minutePinion, hourWheel)) < 1) {
            throw new IllegalArgumentException("The counts (%d, %d, %d, %d) of a motion work must all be at least 1."
                    .formatted(cannonPinion, minuteWheel, minutePinion, hourWheel));
        }
    }

    /** Turns of the cannon pinion for one turn of the hour wheel. */
    public BigFraction ratio() {
        return BigFraction.of(minuteWheel, cannonPinion).multiply(BigFraction.of(hourWheel, minutePinion));
    }

    /** Whether the hour hand keeps exact time with the minute hand. */
    public boolean twelve() {
        return ratio().compareTo(TWELVE) == 0;
    }

    /** Whether one module serves both meshes on their common centre distance: equal sums of counts. */
    public boolean oneModuleServes() {
        return cannonPinion + minuteWheel == minutePinion + hourWheel;
    }

    /** Module of the second mesh over that of the first, so that both have the same centre distance. */
    public BigFraction moduleRatio() {
        return BigFraction.of(cannonPinion + minuteWheel, minutePinion + hourWheel);
    }
}
