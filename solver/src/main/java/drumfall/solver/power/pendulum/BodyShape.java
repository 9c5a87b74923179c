// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

/**
 * The shape of one uniform part of a pendulum, as the swing feels it: the square of its radius of gyration.
 *
 * <p>The axis meant is the one through the part's centre, parallel to the axis of the swing. All formulas are those of any
 * table of moments of inertia (from memory) but the lens, which is integrated from discs; each is held against a sum over
 * small pieces in the tests.
 */
public sealed interface BodyShape {
    /** Square of the radius of gyration about the part's own centre, {@code k²}, m&sup2;. */
    double gyrationSquared();

    /** Height of the part along the rod, m; its foot is half of that below its centre. */
    double height();

    /** All of the mass in one point. */
    record MassPoint() implements BodyShape {
        @Override
        public double gyrationSquared() {
            return 0;
        }

        @Override
        public double height() {
            return 0;
        }
    }

    /**
     * A thin rod along the pendulum, {@code k² = l² / 12}.
     *
     * @param length m, positive
     */
    record ThinRod(double length) implements BodyShape {
        /** Checks the length. */
        public ThinRod {
            requirePositive("length", length);
        }

        @Override
        public double gyrationSquared() {
            return length * length / 12;
        }

        @Override
        public double height() {
            return length;
        }
    }

    /**
     * A round tube along the pendulum, {@code k² = (R² + r²) / 4 + l² / 12}; without a bore a solid cylinder.
     *
     * @param length m, positive
     * @param radius outer radius, m, positive
     * @param bore inner radius, m, from 0 to less than the outer one
     */
    record Tube(double length, double radius, double bore) implements BodyShape {
        /** Checks the sizes. */
        public Tube {
            requirePositive("length", length);
            requirePositive("radius", radius);
            if (!(bore >= 0 && bore < radius)) {
                throw new IllegalArgumentException(
                        "The bore (%s m) of the tube must be from 0 to less than its radius (%s m)."
                                .formatted(bore, radius));
            }
        }

        @Override
        public double gyrationSquared() {
            return (radius * radius + bore * bore) / 4 + length * length / 12;
        }

        @Override
        public double height() {
            return length;
        }
    }

    /**
     * A cylinder or disc whose axis is parallel to the axis of the swing, its face to the front, {@code k² = r² / 2}.
     *
     * @param radius m, positive
     */
    record FacingCylinder(double radius) implements BodyShape {
        /** Checks the radius. */
        public FacingCylinder {
            requirePositive("radius", radius);
        }

        @Override
        public double gyrationSquared() {
            return radius * radius / 2;
        }

        @Override
        public double height() {
            return 2 * radius;
        }
    }

    /**
     * A ball, {@code k² = 2 r² / 5} (Huygens, as told by Derham, <i>The Artificial Clock-Maker</i>, 1696, ch. V).
     *
     * @param radius m, positive
     */
    record Sphere(double radius) implements BodyShape {
        /** Checks the radius. */
        public Sphere {
            requirePositive("radius", radius);
        }

        @Override
        public double gyrationSquared() {
            return 2 * radius * radius / 5;
        }

        @Override
        public double height() {
            return 2 * radius;
        }
    }

    /**
     * A lenticular bob: two equal spherical caps face to face, its edge cutting the air.
     *
     * <p>With {@code t} half the thickness and {@code q = (r² + t²) / 2}, the caps cut into discs give {@code k² = (4 q² / 3
     * - q t² + t⁴ / 5) / (2 (q - t² / 3))}: from {@code r² / 3} for a thin lens to {@code 2 r² / 5} for a ball.
     *
     * @param radius radius of the edge, m, positive
     * @param thickness at the middle, m, positive, at most twice the radius
     */
    record Lens(double radius, double thickness) implements BodyShape {
        /** Checks the sizes. */
        public Lens {
            requirePositive("radius", radius);
            requirePositive("thickness", thickness);
            if (thickness > 2 * radius) {
                throw new IllegalArgumentException(
                        "The thickness (%s m) of the lens must be at most twice its radius (%s m). Maybe a ball is meant."
                                .formatted(thickness, radius));
            }
        }

        @Override
        public double gyrationSquared() {
            double t2 = thickness * thickness / 4;
            double q = (radius * radius + t2) / 2;
            return (4 * q * q / 3 - q * t2 + t2 * t2 / 5) / (2 * (q - t2 / 3));
        }

        @Override
        public double height() {
            return 2 * radius;
        }
    }

    private static void requirePositive(String name, double metres) {
        if (!(metres > 0)) {
            throw new IllegalArgumentException(
                    "The %s (%s m) of a part of the pendulum must be more than 0.".formatted(name, metres));
        }
    }
}
