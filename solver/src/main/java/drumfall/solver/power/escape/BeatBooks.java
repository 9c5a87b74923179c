// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

/**
 * Where the wheel's work of one beat goes, J.
 *
 * @param wheel work of the escape wheel's torque over half a tooth space
 * @param pendulum what the pendulum's own damping takes
 * @param locking rubbed away on the locking faces
 * @param impulseFriction rubbed away on the impulse face
 * @param palletArbor rubbed away in pallet arbor and crutch
 * @param inertia lost in bringing the wheel to speed
 * @param drop the wheel's free turn
 */
public record BeatBooks(
        double wheel,
        double pendulum,
        double locking,
        double impulseFriction,
        double palletArbor,
        double inertia,
        double drop) {
    /** All that is accounted for, J. */
    public double spent() {
        return pendulum + locking + impulseFriction + palletArbor + inertia + drop;
    }

    /** Share of the wheel's work that keeps the pendulum swinging. */
    public double efficiency() {
        return pendulum / wheel;
    }
}
