// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

/**
 * What the escape wheel must be given so that the pendulum keeps its arc, and how long the pendulum remembers.
 *
 * @param torque least torque at the escape wheel, N m; infinite if no torque keeps the arc
 * @param semiArc arc kept, the escape angle and its reserve, rad
 * @param memory time over which the pendulum averages the torque, {@code τ}, s
 * @param equivalentLength length of the simple pendulum that keeps the beat at that arc, m
 * @param pendulumLoss energy the pendulum loses in a beat, J
 */
public record EscapeNeed(double torque, double semiArc, double memory, double equivalentLength, double pendulumLoss) {
    /**
     * The need of one escapement and beat.
     *
     * <p>The memory is {@code τ = (Q/π) · beat / (1 + 2 µ M_e r_p Q / (π r_w m g h A))}: the locking faces' friction adds
     * to the pendulum's own damping.
     *
     * @param escapement the escapement
     * @param pendulum the pendulum
     * @param secondsPerBeat s
     * @param reserveArc arc asked for beyond the escape angle, rad
     */
    public static EscapeNeed of(Deadbeat escapement, Pendulum pendulum, double secondsPerBeat, double reserveArc) {
        DeadbeatForm form = escapement.form();
        double arc = form.escapeAngle() + reserveArc;
        double length = pendulum.equivalentLength(secondsPerBeat, arc);
        double loss = pendulum.lossPerBeat(length, arc);
        double torque = escapement.torqueFor(arc, loss);
        double locking = 2 * form.friction() * torque * escapement.palletRadius() * pendulum.quality();
        double restoring = Math.PI * form.wheelRadius() * pendulum.massMoment(length) * pendulum.gravity() * arc;
        double memory = pendulum.quality() / Math.PI * secondsPerBeat / (1 + locking / restoring);
        return new EscapeNeed(torque, arc, memory, length, loss);
    }
}
