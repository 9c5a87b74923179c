// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.books;

import drumfall.solver.power.Movement;
import drumfall.solver.power.escape.BeatBooks;
import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.power.pendulum.FiniteArc;
import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.train.Train;
import java.util.OptionalDouble;

/**
 * A pendulum regulated so that it keeps the beat at whatever arc it swings, and the arc that a torque keeps it at.
 *
 * <p>Its length, and with it what it loses in a beat, differ a little from arc to arc.
 */
final class RegulatedPendulum {
    private final Deadbeat escapement;
    private final Pendulum pendulum;
    private final double secondsPerBeat;

    RegulatedPendulum(Movement movement, Train train) {
        this.escapement = movement.escapement().with(train.escapeTeeth());
        this.pendulum = movement.pendulum();
        this.secondsPerBeat = train.secondsPerBeat();
    }

    /** The arc under a torque at the escape wheel, rad; empty if the pendulum does not even reach the escape angle. */
    OptionalDouble arcUnder(double torque) {
        return escapement.arcFor(torque, this::loss);
    }

    /** The books of one beat under a torque at an arc. */
    BeatBooks beat(double torque, double arc) {
        return escapement.books(torque, arc, loss(arc));
    }

    /** Energy lost in a beat at an arc, {@code π E(A) / Q}, J. */
    private double loss(double arc) {
        double length = pendulum.equivalentLength(secondsPerBeat, FiniteArc.periodRatio(arc));
        double moment = pendulum.massMoment(length) * pendulum.gravity();
        return Math.PI / pendulum.quality() * pendulum.energy(moment, arc);
    }
}
