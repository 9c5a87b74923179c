// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

/**
 * A motion work with its sizes, both meshes on one centre distance.
 *
 * @param counts the four counts
 * @param cannonModule module of cannon pinion and minute wheel
 * @param minuteModule module of minute pinion and hour wheel
 */
public record SizedMotionWork(MotionWork counts, ToothModule cannonModule, ToothModule minuteModule) {
    /**
     * Checks that both meshes have the same centre distance, to the nanometre.
     *
     * @throws IllegalArgumentException if they differ
     */
    public SizedMotionWork {
        long cannon = doubledDistance(cannonModule, counts.cannonPinion(), counts.minuteWheel());
        long minute = doubledDistance(minuteModule, counts.minutePinion(), counts.hourWheel());
        if (cannon != minute) {
            throw new IllegalArgumentException(
                    "The centre distances (%s mm and %s mm) of a motion work must be equal. Maybe use two modules."
                            .formatted(cannon / 2e6, minute / 2e6));
        }
    }

    static long doubledDistance(ToothModule module, int pinion, int wheel) {
        return module.nanometres() * ((long) pinion + wheel);
    }

    /** Distance of the minute arbor from the centre arbor, m. */
    public double centreDistance() {
        return doubledDistance(cannonModule, counts.cannonPinion(), counts.minuteWheel()) / 2e9;
    }
}
