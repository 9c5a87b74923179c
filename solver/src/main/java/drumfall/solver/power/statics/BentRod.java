// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.statics;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * A round rod on two supports, bent by forces in any direction: {@code E I y'' = M}, each force a term
 * {@code F <x - a>} in brackets that are nothing before {@code a} (W. H. Macaulay, 1919, as textbooks of mechanics give it).
 *
 * <p>Small slopes, no shear. Supports give way to slope and not to load.
 *
 * @param span between the supports, m, positive
 * @param diameter of the rod, m, positive
 * @param modulus of elasticity, Pa, positive
 * @param forces on the rod
 */
public record BentRod(double span, double diameter, double modulus, List<PointForce> forces) {
    /**
     * Checks the sizes and copies the list.
     *
     * @throws IllegalArgumentException if a size is not positive
     */
    public BentRod {
        if (!(span > 0 && diameter > 0 && modulus > 0)) {
            throw new IllegalArgumentException(
                    "The span (%s m), diameter (%s m) and modulus (%s Pa) of a rod must all be more than 0."
                            .formatted(span, diameter, modulus));
        }
        forces = List.copyOf(forces);
    }

    /**
     * Bending moment at a place.
     *
     * @param place behind the front support, m
     * @return N m, not negative
     */
    public double moment(double place) {
        return inBothPlanes(plane -> terms(plane, place, 1));
    }

    /** Greatest bending moment, N m: it is straight between forces, so it is greatest at one of them. */
    public double worstMoment() {
        return loads().mapToDouble(force -> moment(force.place())).max().orElse(0);
    }

    /** Greatest bending stress, {@code 32 M / (π d³)}, Pa. */
    public double worstStress() {
        return 32 * worstMoment() / (Math.PI * diameter * diameter * diameter);
    }

    /**
     * Slope of the bent rod at a place.
     *
     * @param place behind the front support, m
     * @return rad, not negative
     */
    public double slope(double place) {
        return inBothPlanes(plane -> (terms(plane, place, 2) / 2 + start(plane)) / stiffness());
    }

    /**
     * How far the rod gives way at a place.
     *
     * @param place behind the front support, m
     * @return m, not negative
     */
    public double deflection(double place) {
        return inBothPlanes(
                plane -> ((terms(plane, place, 3) - terms(plane, 0, 3)) / 6 + start(plane) * place) / stiffness());
    }

    /** {@code E I} with {@code I = π d⁴ / 64}, N m². */
    private double stiffness() {
        return modulus * Math.PI * Math.pow(diameter, 4) / 64;
    }

    /** The constant that keeps the rod on both supports. */
    private double start(ToDoubleFunction<PointForce> plane) {
        return -(terms(plane, span, 3) - terms(plane, 0, 3)) / (6 * span);
    }

    private double terms(ToDoubleFunction<PointForce> plane, double place, int power) {
        return loads().filter(force -> force.place() < place)
                .mapToDouble(force -> plane.applyAsDouble(force) * Math.pow(place - force.place(), power))
                .sum();
    }

    private Stream<PointForce> loads() {
        Reactions reactions = Reactions.of(span, forces);
        return Stream.concat(forces.stream(), Stream.of(reactions.front(), reactions.rear()));
    }

    private static double inBothPlanes(ToDoubleFunction<ToDoubleFunction<PointForce>> figure) {
        return Math.hypot(figure.applyAsDouble(PointForce::across), figure.applyAsDouble(PointForce::up));
    }
}
