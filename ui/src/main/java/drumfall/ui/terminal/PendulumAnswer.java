// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.power.escape.DeadbeatBalance;
import drumfall.solver.power.pendulum.CompoundPendulum;
import drumfall.solver.power.pendulum.RingDownFit;
import drumfall.solver.power.pendulum.SwingEnergy;
import drumfall.solver.quantity.Quantity;
import java.util.Optional;

/**
 * What is answered of one pendulum, SI units.
 *
 * @param gravity m/s²
 * @param standardGravity whether no place was given
 * @param secondsPerBeat s
 * @param semiArc arc at which the beat is kept, rad; 0 for a vanishing one
 * @param length of the simple pendulum that keeps the beat, m
 * @param bob bob and rod, if a bob is given
 * @param quality if one is given
 * @param escapement if one is asked about
 */
record PendulumAnswer(
        double gravity,
        boolean standardGravity,
        double secondsPerBeat,
        double semiArc,
        double length,
        Optional<Bob> bob,
        Optional<Quality> quality,
        Optional<Escape> escapement) {
    /**
     * The compound pendulum and what was asked of it.
     *
     * @param pendulum bob and rod
     * @param nutPitch pitch of the rating nut
     * @param added weight laid on the rod
     * @param addedAt where, m below the axis
     */
    record Bob(CompoundPendulum pendulum, Optional<Quantity> nutPitch, Optional<Quantity> added, double addedAt) {}

    /**
     * The quality factor, a range for a kind.
     *
     * @param low least
     * @param high greatest
     * @param fit the ring-down it was read from
     */
    record Quality(double low, double high, Optional<RingDownFit> fit) {}

    /**
     * The escapement at both ends of the range of quality.
     *
     * @param low balance at the least quality
     * @param high balance at the greatest
     * @param torque at the escape wheel, if given
     */
    record Escape(DeadbeatBalance low, DeadbeatBalance high, Optional<Quantity> torque) {}

    double beatsPerHour() {
        return 3600 / secondsPerBeat;
    }

    /** {@code m g h} of the compound pendulum, N m. */
    double weightMoment(Bob hung) {
        return hung.pendulum().massMoment() * gravity;
    }

    /** Energies at a quality; there only with a bob. */
    SwingEnergy energy(Bob hung, double q) {
        return new SwingEnergy(weightMoment(hung), q, semiArc);
    }
}
