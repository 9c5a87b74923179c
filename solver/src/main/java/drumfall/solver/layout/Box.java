// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

/**
 * An upright rectangle in the elevation.
 *
 * @param left nm from the dial centre to the right
 * @param bottom nm from the dial centre upwards
 * @param right nm from the dial centre to the right, not less than left
 * @param top nm from the dial centre upwards, not less than bottom
 */
public record Box(long left, long bottom, long right, long top) {
    /**
     * Checks the order of the edges.
     *
     * @throws IllegalArgumentException if an edge lies beyond its opposite
     */
    public Box {
        if (right < left || top < bottom) {
            throw new IllegalArgumentException(
                    "The box (%d, %d, %d, %d nm) must have its left and lower edges first. Maybe two were exchanged."
                            .formatted(left, bottom, right, top));
        }
    }

    /** The width, nm. */
    public long width() {
        return right - left;
    }

    /** The height, nm. */
    public long height() {
        return top - bottom;
    }

    /** The area, m&sup2;. */
    public double area() {
        return width() * 1e-9 * height() * 1e-9;
    }

    /**
     * The smallest box around a circle.
     *
     * @param middle its middle
     * @param radius nm, not negative
     */
    public static Box around(Place middle, long radius) {
        return new Box(middle.x() - radius, middle.y() - radius, middle.x() + radius, middle.y() + radius);
    }

    /** The smallest box around this one and another. */
    public Box around(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(bottom, other.bottom),
                Math.max(right, other.right),
                Math.max(top, other.top));
    }
}
