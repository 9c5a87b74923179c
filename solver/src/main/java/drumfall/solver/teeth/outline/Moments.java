// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

/**
 * Area and moments of a plane figure about the origin.
 *
 * @param area square mm
 * @param x first moment, area times the centroid's x, cubic mm
 * @param y first moment, area times the centroid's y, cubic mm
 * @param polar second moment about the origin, mm to the fourth
 */
public record Moments(double area, double x, double y, double polar) {
    /** Of nothing. */
    public static final Moments ZERO = new Moments(0, 0, 0, 0);

    /** Of two figures side by side; a hole counts with its own sign. */
    public Moments plus(Moments other) {
        return new Moments(area + other.area, x + other.x, y + other.y, polar + other.polar);
    }
}
