// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

/**
 * A point of the plane, y upwards.
 *
 * @param x mm
 * @param y mm
 */
record Point(double x, double y) {
    static Point polar(double radius, double angle) {
        return new Point(radius * Math.cos(angle), radius * Math.sin(angle));
    }

    Point turned(double angle) {
        double cosine = Math.cos(angle);
        double sine = Math.sin(angle);
        return new Point(x * cosine - y * sine, x * sine + y * cosine);
    }

    double distanceTo(Point other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    Point moved(double right, double up) {
        return new Point(x + right, y + up);
    }
}
