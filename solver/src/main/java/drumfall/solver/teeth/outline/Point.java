// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

/**
 * A point in the plane of a gear, its centre the origin.
 *
 * @param x mm
 * @param y mm
 */
public record Point(double x, double y) {
    /** The point at a radius in mm and an angle in radians. */
    public static Point polar(double radius, double angle) {
        return new Point(radius * Math.cos(angle), radius * Math.sin(angle));
    }

    /** This point turned about the origin by an angle in radians. */
    public Point turned(double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return new Point(x * c - y * s, x * s + y * c);
    }

    /** This point mirrored in the x axis. */
    public Point mirrored() {
        return new Point(x, -y);
    }

    /** The distance to another point, mm. */
    public double distance(Point other) {
        return Math.hypot(x - other.x, y - other.y);
    }
}
