// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

/**
 * The teeth of an escape wheel, whatever their number.
 *
 * @param depth depth of the teeth over the wheel's radius, more than 0, less than 1
 * @param frontLean angle by which the tips stand forward of their feet, rad
 * @param width tip and foot of a tooth together over the pitch along the root circle, more than 0, less than 1
 */
public record EscapeToothSize(double depth, double frontLean, double width) {
    /**
     * A size for printed clocks that hang on a wall; common practice, no source. Tips forward of their feet by 10 degrees, as
     * dead escapements are drawn; from memory.
     */
    public static final EscapeToothSize CUSTOMARY = new EscapeToothSize(0.22, Math.toRadians(10), 0.65);

    /**
     * Radius to the roots, m.
     *
     * @param radius to the tips, m
     */
    public double root(double radius) {
        return radius - depth * radius;
    }

    /**
     * Width of a tooth's foot along the root circle, m.
     *
     * @param radius to the tips, m
     * @param teeth how many
     * @param tip width of a tip, m
     */
    public double foot(double radius, int teeth, double tip) {
        return width * 2 * Math.PI * root(radius) / teeth - tip;
    }

    /**
     * Area of the whole disc with its teeth, square metres: each tooth as the trapezium between its tip and its foot. It is the
     * same for any number of teeth, since tip and foot share what there is of the root circle. Lean and curvature, which are
     * left out, take off a hundredth of the disc at 15 teeth, a quarter of that at 30.
     *
     * @param radius to the tips, m
     */
    public double area(double radius) {
        double root = root(radius);
        return Math.PI * root * (root + width * (radius - root));
    }
}
