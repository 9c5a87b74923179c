// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import drumfall.solver.power.pendulum.Bounds;

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
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is out of its range
     */
    public DeadbeatForm {
        Bounds.moreThan("wheelRadius", "an escape wheel", wheelRadius, 0, "m");
        Bounds.moreThan("spanLimit", "the pallets", spanLimit, 0, "rad");
        Bounds.lessThan("spanLimit", "the pallets", spanLimit, Math.PI, "rad");
        Bounds.moreThan("lift", "the pallets", lift, 0, "rad");
        Bounds.atLeast("lock", "the pallets", lock, 0, "rad");
        Bounds.atLeast("drop", "an escape wheel", drop, 0, "rad");
        Bounds.atLeast("friction", "the pallets", friction, 0, "");
        Bounds.atLeast("palletArborTorque", "a deadbeat", palletArborTorque, 0, "N m");
        Bounds.atLeast("inertiaShare", "the impulse", inertiaShare, 0, "");
        Bounds.lessThan("inertiaShare", "the impulse", inertiaShare, 1, "");
    }

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
