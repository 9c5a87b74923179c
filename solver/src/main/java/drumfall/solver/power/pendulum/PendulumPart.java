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
     * @throws IllegalArgumentException if the mass is not positive or the place is nowhere
     */
    public PendulumPart {
        if (!(mass > 0) || Double.isInfinite(mass)) {
            throw new IllegalArgumentException(
                    "The mass (%s kg) of a part of the pendulum must be more than 0. Maybe leave the part out."
                            .formatted(mass));
        }
        if (!Double.isFinite(centre)) {
            throw new IllegalArgumentException(
                    "The centre (%s m) of a part of the pendulum must be a finite distance.".formatted(centre));
        }
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
