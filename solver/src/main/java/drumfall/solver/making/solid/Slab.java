// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.solid;

/**
 * A piece of a solid whose section does not change.
 *
 * @param from height at which it begins, mm
 * @param to height at which it ends, mm, more than {@code from}
 * @param region its section
 */
public record Slab(double from, double to, Region region) {
    /**
     * Checks the heights.
     *
     * @throws IllegalArgumentException if it does not end above its beginning
     */
    public Slab {
        if (!(to > from)) {
            throw new IllegalArgumentException(
                    "The height (" + (to - from) + " mm) of a slab must be above 0 mm. Maybe leave the slab out.");
        }
    }

    /** Its height, mm. */
    public double height() {
        return to - from;
    }

    /** Its volume, cubic mm. */
    public double volume() {
        return region.moments().area() * height();
    }
}
