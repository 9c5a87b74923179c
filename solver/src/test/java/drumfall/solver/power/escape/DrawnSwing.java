// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import org.hipparchus.ode.ODEStateAndDerivative;

/**
 * The same pendulum on drawn pallets with a wheel that has inertia: unlocked, the wheel runs after the pallet, strikes it
 * without rebound, pushes it to the corner and drops; its speed is lost at the other locking face.
 */
final class DrawnSwing {
    private final Deadbeat escapement;
    private final double weightMoment;
    private final double inertia;
    private final double damping;
    private final double torque;
    private final double wheelInertia;

    DrawnSwing(
            Deadbeat escapement,
            double weightMoment,
            double length,
            double quality,
            double torque,
            double wheelInertia) {
        this.escapement = escapement;
        this.weightMoment = weightMoment;
        this.inertia = weightMoment * length / 9.80665;
        this.damping = Math.sqrt(inertia * weightMoment) / quality;
        this.torque = torque;
        this.wheelInertia = wheelInertia;
    }

    /** The arc after many beats, pallets in turn; NaN if the pendulum no longer lets the teeth escape. */
    double settled(double start, int beats) {
        PalletDrawing drawing = new PalletDrawing(escapement);
        double arc = start;
        for (int i = 0; i < beats; i++) {
            arc = next(arc, i % 2 == 0 ? drawing.entry() : drawing.exit());
            if (!(arc > escapement.form().escapeAngle())) {
                return Double.NaN;
            }
        }
        return arc;
    }

    private double next(double arc, Pallet pallet) {
        DeadbeatForm form = escapement.form();
        ImpulseTrace trace = new ImpulseTrace(pallet);
        double rubbing =
                form.palletArborTorque() + form.friction() * torque / form.wheelRadius() * escapement.palletRadius();
        double[] free = alone(new double[] {-arc, 0}, rubbing, s -> s[0] - (form.lock() - form.escapeAngle()));
        double[] pushed = pushed(chase(free, trace), trace);
        if (pushed[0] < form.escapeAngle() - 1e-6 || pushed[1] <= 0) {
            return Double.NaN;
        }
        double dropping = dropTime(pushed[2]);
        double[] dropped = timed(new double[] {pushed[0], pushed[1], 0}, dropping);
        return dropped[1] > 0 ? alone(new double[] {dropped[0], dropped[1]}, rubbing, s -> s[1])[0] : dropped[0];
    }

    /** Pendulum angle and speed, wheel turn and speed when the tooth strikes the impulse face. */
    private double[] chase(double[] pendulum, ImpulseTrace trace) {
        double friction = escapement.form().palletArborTorque();
        return SteppedMotion.run(
                        new double[] {pendulum[0] + 1e-12, pendulum[1], 0, 0},
                        0.0005,
                        s -> new double[] {s[1], pendulumSlope(s, friction), s[3], torque / wheelInertia},
                        s -> s[0] - trace.palletAngle(Math.min(s[2], escapement.workingTurn())))
                .getPrimaryState();
    }

    /** Pendulum angle and speed, wheel speed when the tooth leaves the face. */
    private double[] pushed(double[] struck, ImpulseTrace trace) {
        double turn = escapement.workingTurn();
        if (struck[2] >= turn) {
            return new double[] {struck[0], struck[1], struck[3]};
        }
        double lift = trace.turnRatio(struck[2]);
        double passed = trace.torqueRatio(struck[2], escapement.form().friction());
        double speed =
                (inertia * struck[1] + passed * wheelInertia * struck[3]) / (inertia * lift + passed * wheelInertia);
        double[] end = SteppedMotion.run(
                        new double[] {struck[2], speed}, 0.002, s -> joined(s, trace), s -> s[0] - turn)
                .getPrimaryState();
        return new double[] {trace.palletAngle(turn), trace.turnRatio(turn) * end[1], end[1]};
    }

    private double[] joined(double[] state, ImpulseTrace trace) {
        double lift = trace.turnRatio(state[0]);
        double step = 1e-5;
        double bend = (trace.turnRatio(state[0] + step) - trace.turnRatio(state[0] - step)) / (2 * step);
        double passed = trace.torqueRatio(state[0], escapement.form().friction());
        double moment = passed * torque
                - weightMoment * Math.sin(trace.palletAngle(state[0]))
                - damping * lift * state[1]
                - escapement.form().palletArborTorque()
                - inertia * bend * state[1] * state[1];
        return new double[] {state[1], moment / (inertia * lift + passed * wheelInertia)};
    }

    private double dropTime(double speed) {
        double push = torque / wheelInertia;
        return (Math.sqrt(speed * speed + 2 * push * escapement.form().drop()) - speed) / push;
    }

    private double[] timed(double[] start, double seconds) {
        double friction = escapement.form().palletArborTorque();
        return SteppedMotion.run(
                        start,
                        seconds / 2,
                        s -> new double[] {s[1], pendulumSlope(s, friction), 1},
                        s -> s[1] > 0 ? s[2] - seconds : 0)
                .getPrimaryState();
    }

    private double[] alone(double[] start, double friction, java.util.function.ToDoubleFunction<double[]> until) {
        ODEStateAndDerivative end =
                SteppedMotion.run(start, 0.02, s -> new double[] {s[1], pendulumSlope(s, friction)}, until);
        return end.getPrimaryState();
    }

    private double pendulumSlope(double[] s, double friction) {
        return (-friction - damping * s[1] - weightMoment * Math.sin(s[0])) / inertia;
    }
}
