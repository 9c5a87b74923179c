// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import drumfall.solver.power.pendulum.Bounds;
import drumfall.solver.power.pendulum.FiniteArc;
import drumfall.solver.power.pendulum.Pendulum;

/**
 * A pendulum kept at one arc by a deadbeat escapement: all of the need that does not depend on the beat, worked out once.
 */
public final class HeldArc {
    private final Deadbeat escapement;
    private final Pendulum pendulum;
    private final double arc;
    private final double periodRatio;
    private final double lossPerEnergy;
    private final double rubbingRatio;

    /**
     * The arc to be kept: the escape angle and its reserve.
     *
     * @param escapement the escapement
     * @param pendulum the pendulum
     * @param reserveArc arc asked for beyond the escape angle, rad, not negative; less than &pi; with it
     * @throws IllegalArgumentException if the reserve is negative or the arc half a turn
     */
    public HeldArc(Deadbeat escapement, Pendulum pendulum, double reserveArc) {
        Bounds.atLeast("reserveArc", "a kept pendulum", reserveArc, 0, "rad");
        this.escapement = escapement;
        this.pendulum = pendulum;
        this.arc = escapement.form().escapeAngle() + reserveArc;
        this.periodRatio = FiniteArc.periodRatio(arc);
        this.lossPerEnergy = Math.PI / pendulum.quality();
        this.rubbingRatio = escapement.exists() ? escapement.rubbingRatio() : 0;
    }

    /** The arc kept, rad. */
    public double arc() {
        return arc;
    }

    /**
     * What the escape wheel needs at one beat.
     *
     * <p>The memory is {@code τ = (Q/π) beat / (1 + 2 (µ M_e r_p / r_w + M_f) Q / (π m g h sin A))}, 0 where no torque
     * keeps the arc. A beat changes the energy {@code E(A) = m g h (1 - cos A)} by {@code M_e gain(A) - 2 A M_f - π E /
     * Q}, nothing in the steady swing; beside it only the slope of that sum counts, {@code -2 µ M_e r_p / r_w - 2 M_f - π
     * m g h sin A / Q}, and an arc more by {@code dA} is an energy more by {@code m g h sin A dA}. The impulse brings the
     * same energy at every arc, so all that is rubbed away brings the arc back, the Coulomb torques too: a pendulum left
     * to itself loses {@code π / 2Q} of its arc in a beat, the kept one {@code π / Q} of what its arc is off.
     *
     * @param secondsPerBeat s
     */
    public EscapeNeed need(double secondsPerBeat) {
        double length = pendulum.equivalentLength(secondsPerBeat, periodRatio);
        double moment = pendulum.massMoment(length) * pendulum.gravity();
        double loss = lossPerEnergy * pendulum.energy(moment, arc);
        double torque = escapement.torqueFor(arc, loss);
        return new EscapeNeed(torque, arc, memory(secondsPerBeat, moment, torque), length, loss);
    }

    private double memory(double secondsPerBeat, double moment, double torque) {
        if (Double.isInfinite(torque)) {
            return 0;
        }
        double rubbing = rubbingRatio * torque + escapement.form().palletArborTorque();
        return secondsPerBeat / (lossPerEnergy + 2 * rubbing / (moment * Math.sin(arc)));
    }
}
