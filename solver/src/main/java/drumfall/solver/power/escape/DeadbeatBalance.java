// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import drumfall.solver.power.pendulum.SwingEnergy;
import java.util.OptionalDouble;

/**
 * A pendulum and the deadbeat escapement that keeps it, balanced both ways: the torque for an arc, the arc for a torque.
 *
 * <p>{@code M_e δ η_i - locking - pallet arbor - inertia = π E(A) / Q} for each beat. What the wheel brings falls with the
 * arc and what the pendulum loses rises with it, so each torque has one arc.
 *
 * @param escapement pallets and wheel; must exist
 * @param weightMoment {@code m_tot g h_cm} of the pendulum, N m, positive
 * @param quality {@code Q}, at least 1
 */
public record DeadbeatBalance(Deadbeat escapement, double weightMoment, double quality) {
    /**
     * Checks that there is something to balance.
     *
     * @throws IllegalArgumentException if the escapement does not exist, the moment is not positive or the quality below 1
     */
    public DeadbeatBalance {
        if (!escapement.exists()) {
            throw new IllegalArgumentException(
                    "The escapement of %d teeth must embrace a tooth and leave the wheel a turn to work with. Maybe widen the span or lessen the drop."
                            .formatted(escapement.teeth()));
        }
        new SwingEnergy(weightMoment, quality, 0);
    }

    /** Least arc at which every tooth escapes, {@code e = (λ + ℓ) / 2}, rad. */
    public double leastArc() {
        return escapement.form().escapeAngle();
    }

    /** Arc that no torque exceeds, {@code A_sat}, or a quarter turn if that is less; rad. */
    public double greatestArc() {
        return escapement.greatestArc();
    }

    /** Whether some torque lets the teeth escape at all. */
    public boolean canRun() {
        return leastArc() < greatestArc();
    }

    /**
     * Torque at the escape wheel that keeps an arc, N m.
     *
     * @param semiArc rad, from {@link #leastArc} to less than {@link #greatestArc}
     * @throws IllegalArgumentException if the pallets do not allow that arc
     */
    public double torqueFor(double semiArc) {
        if (!(semiArc >= leastArc())) {
            throw new IllegalArgumentException(
                    "The semiArc (%s rad) must be at least %s rad, where a tooth escapes. Maybe lessen lift or lock."
                            .formatted(semiArc, leastArc()));
        }
        if (!(semiArc < greatestArc())) {
            throw new IllegalArgumentException(
                    "The semiArc (%s rad) must be less than %s rad, which no weight exceeds with these pallets. Maybe lessen their friction."
                            .formatted(semiArc, greatestArc()));
        }
        return escapement.torqueFor(semiArc, swing(semiArc).lossPerBeat());
    }

    /**
     * Least torque that keeps a reserve of arc beyond the escape angle, N m.
     *
     * @param reserveArc rad, not negative
     * @throws IllegalArgumentException if the pallets do not allow that arc
     */
    public double leastTorque(double reserveArc) {
        return torqueFor(leastArc() + reserveArc);
    }

    /**
     * Arc that a torque keeps, rad.
     *
     * @param torque at the escape wheel, N m
     * @return empty if the torque does not bring the pendulum to the escape angle: the clock stands
     */
    public OptionalDouble arcFor(double torque) {
        return escapement.arcFor(torque, arc -> swing(arc).lossPerBeat());
    }

    /**
     * The books of one beat in the steady swing.
     *
     * @param semiArc rad, from {@link #leastArc} to less than {@link #greatestArc}
     * @throws IllegalArgumentException if the pallets do not allow that arc
     */
    public BeatBooks books(double semiArc) {
        return escapement.books(torqueFor(semiArc), semiArc, swing(semiArc).lossPerBeat());
    }

    private SwingEnergy swing(double semiArc) {
        return new SwingEnergy(weightMoment, quality, semiArc);
    }
}
