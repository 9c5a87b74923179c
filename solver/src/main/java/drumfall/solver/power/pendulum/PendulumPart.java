// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

/**
 * One part of a pendulum at its place.
 *
 * @param mass kg, positive
 * @param shape its shape
 * @param centre distance of its centre below the axis of the swing, m; negative above it
 */
public record PendulumPart(double mass, BodyShape shape, double centre) {
    /**
     * Checks the mass and the place.
     *
     * @throws IllegalArgumentException if the mass is not positive and finite or the place is nowhere
     */
    public PendulumPart {
        Bounds.moreThan("mass", "a part of the pendulum", mass, 0, "kg");
        Bounds.finite("centre", "a part of the pendulum", centre, "m");
    }

    /** Mass times distance of the centre, {@code m h}, kg m. */
    public double moment() {
        return mass * centre;
    }

    /** Moment of inertia about the axis of the swing, {@code m (k² + h²)}, kg m&sup2;. */
    public double inertia() {
        return mass * (shape.gyrationSquared() + centre * centre);
    }

    /**
     * The part moved down the rod.
     *
     * @param down m; negative for up
     */
    public PendulumPart lowered(double down) {
        return new PendulumPart(mass, shape, centre + down);
    }
}
