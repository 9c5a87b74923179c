// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where the bob must hang so that the whole pendulum has an equivalent length.
 *
 * <p>{@code I / (m h) = L} is a quadratic in the bob's distance. Of its two answers the larger is meant: there a lower bob
 * makes the pendulum slower, which is how a rating nut is used.
 */
public final class BobPlace {
    private BobPlace() {}

    /**
     * The pendulum whose other parts stay where they are.
     *
     * @param length equivalent length {@code L}, m, positive
     * @param mass of the bob, kg, positive
     * @param shape of the bob
     * @param fixed the other parts
     * @return empty if no place of the bob below the axis gives that length
     */
    public static Optional<CompoundPendulum> of(double length, double mass, BodyShape shape, List<PendulumPart> fixed) {
        check(length, mass);
        double inertia = fixed.stream().mapToDouble(PendulumPart::inertia).sum();
        double moment = fixed.stream().mapToDouble(PendulumPart::moment).sum();
        // m_b l² - L m_b l + (I_f + m_b k² - L S_f) = 0
        OptionalDouble distance =
                largerRoot(mass, length * mass, inertia + mass * shape.gyrationSquared() - length * moment);
        return distance.isPresent() && distance.getAsDouble() > 0
                ? Optional.of(new CompoundPendulum(new PendulumPart(mass, shape, distance.getAsDouble()), fixed))
                : Optional.empty();
    }

    /**
     * The pendulum on a thin uniform rod that reaches from the axis to the bob's centre.
     *
     * @param length equivalent length {@code L}, m, positive
     * @param mass of the bob, kg, positive
     * @param shape of the bob
     * @param rodMass kg, positive
     * @return empty if the bob is too large for that length
     */
    public static Optional<CompoundPendulum> onRodToTheBob(
            double length, double mass, BodyShape shape, double rodMass) {
        check(length, mass);
        Bounds.moreThan("rodMass", "a pendulum", rodMass, 0, "kg");
        // (m_b + m_r / 3) l² - L (m_b + m_r / 2) l + m_b k² = 0
        return largerRoot(mass + rodMass / 3, length * (mass + rodMass / 2), mass * shape.gyrationSquared()).stream()
                .mapToObj(distance -> new CompoundPendulum(
                        new PendulumPart(mass, shape, distance),
                        List.of(new PendulumPart(rodMass, new BodyShape.ThinRod(distance), distance / 2))))
                .findFirst();
    }

    /**
     * Shortest equivalent length that some place of the bob gives beside parts that stay where they are, m.
     *
     * @param mass of the bob, kg, positive
     * @param shape of the bob
     * @param fixed the other parts
     */
    public static double shortest(double mass, BodyShape shape, List<PendulumPart> fixed) {
        double arm = fixed.stream().mapToDouble(PendulumPart::moment).sum() / mass;
        double square = fixed.stream().mapToDouble(PendulumPart::inertia).sum() / mass + shape.gyrationSquared();
        return 2 * (Math.sqrt(arm * arm + square) - arm);
    }

    /**
     * Shortest equivalent length on a thin rod that reaches to the bob's centre, m.
     *
     * @param mass of the bob, kg, positive
     * @param shape of the bob
     * @param rodMass kg, not negative
     */
    public static double shortestOnRodToTheBob(double mass, BodyShape shape, double rodMass) {
        return 2 * Math.sqrt((mass + rodMass / 3) * mass * shape.gyrationSquared()) / (mass + rodMass / 2);
    }

    private static void check(double length, double mass) {
        Bounds.moreThan("equivalentLength", "a pendulum", length, 0, "m");
        Bounds.moreThan("mass", "a bob", mass, 0, "kg");
    }

    /** Of {@code a x² - b x + c = 0}, {@code a} and {@code b} positive. */
    private static OptionalDouble largerRoot(double a, double b, double c) {
        double discriminant = b * b - 4 * a * c;
        return discriminant < 0 ? OptionalDouble.empty() : OptionalDouble.of((b + Math.sqrt(discriminant)) / (2 * a));
    }
}
