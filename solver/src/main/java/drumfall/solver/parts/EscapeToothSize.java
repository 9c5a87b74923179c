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

    /**
     * Second moment of the whole disc with its teeth about its axis, m⁴, as they are drawn: from the axis, triangles to a tooth's back
     * and front and the sector to its tip, less the sector to its foot.
     *
     * @param radius to the tips, m
     * @param teeth how many
     * @param tip width of a tip, m
     */
    public double polar(double radius, int teeth, double tip) {
        double root = root(radius);
        double foot = foot(radius, teeth, tip) / root;
        double front = Math.asin(Math.min(1, radius * Math.sin(frontLean) / root)) - frontLean;
        double tooth = triangle(root, radius, front + foot - tip / radius)
                - triangle(root, radius, front)
                + PartInertia.fourth(radius) / 4 * tip / radius
                - PartInertia.fourth(root) / 4 * foot;
        return Math.PI / 2 * PartInertia.fourth(root) + teeth * tooth;
    }

    /** Of a triangle with a corner on the axis: a sixth of its area times the squares and the product of its two sides. */
    private static double triangle(double one, double other, double angle) {
        double area = one * other * Math.sin(angle) / 2;
        return area / 6 * (one * one + other * other + one * other * Math.cos(angle));
    }
}
