// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.books;

import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborRole;

/**
 * One arbor with all that loads it.
 *
 * @param role what it is in the train
 * @param friction of its supports, the hands among what is always there
 * @param wheelArm arm of the force at its wheel, m, positive
 * @param wheelMass of its wheel, µg
 * @param drivenArm arm of the force that drives it, at its pinion or at the drum's line, m, positive
 * @param drivenMass of its pinion or drum, µg
 * @param speed rad/s, positive
 */
public record LoadedArbor(
        ArborRole role,
        ArborFriction friction,
        double wheelArm,
        long wheelMass,
        double drivenArm,
        long drivenMass,
        double speed) {
    private static final double KILOGRAMS_PER_MICROGRAM = 1e-9;

    /**
     * Torque it must be given to hand on a torque: {@code (M_out (1 + k_w) + slope w + standing) / (1 - k_p)}.
     *
     * @param out N m
     * @return N m, or infinity if friction holds it
     */
    public double given(double out) {
        return friction.drive(friction.load(out, wheelArm, wheelMass), drivenArm, drivenMass);
    }

    /**
     * Torque it hands on of a torque that it is given; the inverse of {@link #given}.
     *
     * @param given N m
     * @return N m, not above 0 if the arbor stands still
     */
    public double handedOn(double given) {
        double load = given * (1 - friction.pinionSlope() / drivenArm) - friction.pinionSlope() * drivenWeight();
        double wheelSide = load - friction.wheelSlope() * wheelWeight() - friction.standing();
        return wheelSide / (1 + friction.wheelSlope() / wheelArm);
    }

    /**
     * Torque that its supports and hands take, from the forces themselves.
     *
     * @param given torque it is given, N m
     * @param out torque it hands on, N m
     * @return N m
     */
    public double taken(double given, double out) {
        return friction.pinionSlope() * (given / drivenArm + drivenWeight())
                + friction.wheelSlope() * (out / wheelArm + wheelWeight())
                + friction.standing();
    }

    /** Weight of its wheel, N. */
    public double wheelWeight() {
        return wheelMass * KILOGRAMS_PER_MICROGRAM * friction.gravity();
    }

    /** Weight of its pinion or drum, N. */
    public double drivenWeight() {
        return drivenMass * KILOGRAMS_PER_MICROGRAM * friction.gravity();
    }

    /**
     * The same arbor in other supports.
     *
     * @param other their friction
     */
    public LoadedArbor withFriction(ArborFriction other) {
        return new LoadedArbor(role, other, wheelArm, wheelMass, drivenArm, drivenMass, speed);
    }

    /**
     * The same arbor with another wheel mass.
     *
     * @param mass µg
     */
    public LoadedArbor withWheelMass(long mass) {
        return new LoadedArbor(role, friction, wheelArm, mass, drivenArm, drivenMass, speed);
    }
}
