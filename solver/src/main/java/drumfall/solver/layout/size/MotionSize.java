// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.size;

/**
 * The motion work before the front plate: cannon pinion and minute wheel in its first plane, minute pinion and hour
 * wheel in its second, both meshes on one centre distance.
 *
 * @param centreDistance nm, positive
 * @param cannonTipRadius nm, positive
 * @param minuteWheelTipRadius nm, positive
 * @param minutePinionTipRadius nm, positive
 * @param hourWheelTipRadius nm, positive
 * @param studRadius radius of the minute arbor's stud, nm, positive
 * @param firstThickness thickness of the first plane, nm, positive
 * @param secondThickness thickness of the second plane, nm, positive
 */
public record MotionSize(
        long centreDistance,
        long cannonTipRadius,
        long minuteWheelTipRadius,
        long minutePinionTipRadius,
        long hourWheelTipRadius,
        long studRadius,
        long firstThickness,
        long secondThickness) {
    /**
     * Checks the lengths.
     *
     * @throws IllegalArgumentException if a length is out of range
     */
    public MotionSize {
        Nanometres.positive("motion work centre distance", centreDistance);
        Nanometres.positive("cannon pinion tip radius", cannonTipRadius);
        Nanometres.positive("minute wheel tip radius", minuteWheelTipRadius);
        Nanometres.positive("minute pinion tip radius", minutePinionTipRadius);
        Nanometres.positive("hour wheel tip radius", hourWheelTipRadius);
        Nanometres.positive("stud radius", studRadius);
        Nanometres.positive("first motion plane", firstThickness);
        Nanometres.positive("second motion plane", secondThickness);
    }
}
