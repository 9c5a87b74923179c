// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import org.hipparchus.ode.ODEStateAndDerivative;

/**
 * A pendulum with viscous damping and a deadbeat escapement as a wedge, stepped through time from one end of the swing to
 * the other: rub, unlock, impulse, drop, rub. Nothing of the energy balance is used.
 */
final class WedgeSwing {
    private final Deadbeat escapement;
    private final double weightMoment;
    private final double inertia;
    private final double damping;
    private final double torque;

    WedgeSwing(Deadbeat escapement, double weightMoment, double length, double quality, double torque) {
        this.escapement = escapement;
        this.weightMoment = weightMoment;
        this.inertia = weightMoment * length / 9.80665;
        this.damping = Math.sqrt(inertia * weightMoment) / quality;
        this.torque = torque;
    }

    /** The arc at the other end of a swing that starts at rest at an arc. */
    double next(double arc) {
        DeadbeatForm form = escapement.form();
        double rubbing =
                form.palletArborTorque() + form.friction() * torque / form.wheelRadius() * escapement.palletRadius();
        double impulse = torque
                * escapement.workingTurn()
                * escapement.impulseEfficiency()
                * (1 - form.inertiaShare())
                / form.lift();
        double unlock = form.lock() - form.escapeAngle();
        double[] state = phase(new double[] {-arc, 0}, -rubbing, s -> s[0] - unlock);
        state = phase(state, impulse - form.palletArborTorque(), s -> s[0] - form.escapeAngle());
        return phase(state, -rubbing, s -> s[1])[0];
    }

    private double[] phase(double[] start, double moment, java.util.function.ToDoubleFunction<double[]> until) {
        ODEStateAndDerivative end = SteppedMotion.run(
                start,
                0.02,
                s -> new double[] {s[1], (moment - damping * s[1] - weightMoment * Math.sin(s[0])) / inertia},
                until);
        return end.getPrimaryState();
    }

    /** The arc after many beats. */
    double settled(double start, int beats) {
        double arc = start;
        for (int i = 0; i < beats; i++) {
            arc = next(arc);
        }
        return arc;
    }
}
