// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

/**
 * A driver, the gear it drives and the distance between their centres, at module 1.
 *
 * @param driver the driving teeth
 * @param follower the driven teeth
 * @param centreDistance nominal distance of centres, modules, &gt; 0
 */
public record MeshPair(ToothForm driver, ToothForm follower, double centreDistance) {
    /**
     * Checks that the driver may drive.
     *
     * @throws IllegalArgumentException if the driver's form may only be driven or the distance is not positive
     */
    public MeshPair {
        if (!driver.mayDrive()) {
            throw new IllegalArgumentException("The form (lantern) of the driving pinion of " + driver.toothCount()
                    + " must be one that may drive. Maybe take an involute pair.");
        }
        if (!(centreDistance > 0)) {
            throw new IllegalArgumentException("The centreDistance (" + centreDistance
                    + ") of a mesh must be above 0 modules. Maybe check its sign.");
        }
    }

    /** The nominal ratio of speeds, driver teeth over follower teeth. */
    public double ratio() {
        return driver.toothCount() / (double) follower.toothCount();
    }
}
