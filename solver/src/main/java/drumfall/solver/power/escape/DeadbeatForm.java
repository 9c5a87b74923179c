// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

/**
 * What a brief fixes of a deadbeat escapement with tangential pallets; the escape wheel's tooth count stays open.
 *
 * @param wheelRadius radius of the escape wheel to its tips, m, positive
 * @param spanLimit largest angle between the locking corners seen from the wheel's centre, rad, less than &pi;
 * @param lift impulse angle of the pendulum, {@code λ}, rad, positive
 * @param lock {@code ℓ}, rad, not negative
 * @param drop free turn of the wheel in one beat, {@code d}, rad, not negative
 * @param friction coefficient at the pallets, not negative
 * @param palletArborTorque Coulomb torque of pallet arbor and crutch, {@code M_f}, N m, not negative
 * @param inertiaShare share of the impulse that goes into bringing the wheel to speed, from 0 to less than 1
 */
public record DeadbeatForm(
        double wheelRadius,
        double spanLimit,
        double lift,
        double lock,
        double drop,
        double friction,
        double palletArborTorque,
        double inertiaShare) {
    /** Angle past the zero line at which a tooth escapes, {@code e = (λ + ℓ) / 2}, rad. */
    public double escapeAngle() {
        return (lift + lock) / 2;
    }

    /**
     * The escapement with one wheel.
     *
     * @param teeth teeth of the escape wheel
     */
    public Deadbeat with(int teeth) {
        return new Deadbeat(this, teeth);
    }
}
