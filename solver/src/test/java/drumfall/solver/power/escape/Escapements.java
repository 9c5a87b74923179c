// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

/** Deadbeats for tests: a wheel of 26 mm, pallets over 95° at most, 3 % of the impulse for the wheel's inertia; our own. */
final class Escapements {
    private static final double WHEEL_RADIUS = 0.026;
    private static final double INERTIA_SHARE = 0.03;

    private Escapements() {}

    /** A deadbeat; lift, lock and drop in degrees, the torque of the pallet arbor in N m. */
    static Deadbeat deadbeat(
            int teeth, double lift, double lock, double drop, double friction, double palletArborTorque) {
        return new DeadbeatForm(
                        WHEEL_RADIUS,
                        Math.toRadians(95),
                        Math.toRadians(lift),
                        Math.toRadians(lock),
                        Math.toRadians(drop),
                        friction,
                        palletArborTorque,
                        INERTIA_SHARE)
                .with(teeth);
    }
}
