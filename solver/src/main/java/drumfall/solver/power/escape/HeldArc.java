// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

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
    private final double lockingPerTorque;

    /**
     * The arc to be kept: the escape angle and its reserve.
     *
     * @param escapement the escapement
     * @param pendulum the pendulum
     * @param reserveArc arc asked for beyond the escape angle, rad
     */
    public HeldArc(Deadbeat escapement, Pendulum pendulum, double reserveArc) {
        this.escapement = escapement;
        this.pendulum = pendulum;
        this.arc = escapement.form().escapeAngle() + reserveArc;
        this.periodRatio = FiniteArc.periodRatio(arc);
        this.lossPerEnergy = Math.PI / pendulum.quality();
        this.lockingPerTorque = escapement.exists()
                ? 2 * escapement.form().friction() * escapement.palletRadius() * pendulum.quality()
                : 0;
    }

    /** The arc kept, rad. */
    public double arc() {
        return arc;
    }

    /**
     * What the escape wheel needs at one beat.
     *
     * <p>The memory is {@code τ = (Q/π) · beat / (1 + 2 µ M_e r_p Q / (π r_w m g h A))}: the locking faces' friction adds
     * to the pendulum's own damping. It is 0 where no torque keeps the arc.
     *
     * @param secondsPerBeat s
     */
    public EscapeNeed need(double secondsPerBeat) {
        double length = pendulum.equivalentLength(secondsPerBeat, periodRatio);
        double moment = pendulum.massMoment(length) * pendulum.gravity();
        double loss = lossPerEnergy * pendulum.energy(moment, arc);
        double torque = escapement.torqueFor(arc, loss);
        double restoring = Math.PI * escapement.form().wheelRadius() * moment * arc;
        double memory = Double.isInfinite(torque)
                ? 0
                : secondsPerBeat / lossPerEnergy / (1 + lockingPerTorque * torque / restoring);
        return new EscapeNeed(torque, arc, memory, length, loss);
    }
}
