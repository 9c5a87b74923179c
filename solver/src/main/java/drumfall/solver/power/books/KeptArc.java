// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.books;

import drumfall.solver.power.Movement;
import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.power.pendulum.FiniteArc;
import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.train.Train;
import java.util.OptionalDouble;

/**
 * The arc that a torque at the escape wheel keeps: the root of {@code M_e gain(A) - 2 A M_f = π E(A) / Q}.
 *
 * <p>The pendulum is taken as regulated, so that it keeps the beat at whatever arc it swings. The left side falls with
 * {@code A}, the right side rises, so there is one root at most and it is bracketed by the escape angle and the arc that no
 * weight exceeds.
 */
final class KeptArc {
    private static final int HALVINGS = 200;

    private final Deadbeat escapement;
    private final Pendulum pendulum;
    private final double secondsPerBeat;

    KeptArc(Movement movement, Train train) {
        this.escapement = movement.escapement().with(train.escapeTeeth());
        this.pendulum = movement.pendulum();
        this.secondsPerBeat = train.secondsPerBeat();
    }

    /**
     * The arc.
     *
     * @param torque at the escape wheel, N m
     * @return rad; empty if the pendulum does not even reach the escape angle
     */
    OptionalDouble under(double torque) {
        double low = escapement.form().escapeAngle();
        if (!escapement.exists() || !(surplus(torque, low) > 0)) {
            return OptionalDouble.empty();
        }
        double high = Math.min(escapement.saturationArc(), Math.PI * 0.999);
        for (int i = 0; i < HALVINGS && low < high; i++) {
            double middle = (low + high) / 2;
            if (middle <= low || middle >= high) {
                break;
            }
            if (surplus(torque, middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(low);
    }

    private double surplus(double torque, double arc) {
        return torque * escapement.gain(arc) - 2 * arc * escapement.form().palletArborTorque() - pendulumLoss(arc);
    }

    /** Energy the pendulum loses in a beat at an arc, {@code π E(A) / Q}, J. */
    double pendulumLoss(double arc) {
        double length = pendulum.equivalentLength(secondsPerBeat, FiniteArc.periodRatio(arc));
        double moment = pendulum.massMoment(length) * pendulum.gravity();
        return Math.PI / pendulum.quality() * pendulum.energy(moment, arc);
    }

    Deadbeat escapement() {
        return escapement;
    }
}
