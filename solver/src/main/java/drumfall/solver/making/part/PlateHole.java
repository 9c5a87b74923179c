// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import drumfall.solver.making.solid.SizeLimitException;

/**
 * A hole through a plate, with or without a wider seat from above for a bearing or the end of a pillar.
 *
 * @param name what it is for, such as {@code arbor 2}
 * @param x from the plate's middle, m
 * @param y from the plate's middle, m
 * @param through diameter of the hole as drawn, m
 * @param seat diameter of the seat as drawn, m; 0 for none
 * @param depth of the seat, m; 0 for none
 */
public record PlateHole(String name, double x, double y, double through, double seat, double depth) {
    /**
     * Checks the seat.
     *
     * @throws SizeLimitException if a seat is narrower than the hole, or has no depth
     */
    public PlateHole {
        if (seat != 0) {
            SizeLimitException.atLeast("seat of the hole for " + name, seat, through, "the hole's own diameter");
            SizeLimitException.atLeast("seat depth of the hole for " + name, depth, 1e-5, "or there is no seat");
        }
    }

    /** A hole without a seat. */
    public static PlateHole plain(String name, double x, double y, double through) {
        return new PlateHole(name, x, y, through, 0, 0);
    }

    /** Its largest radius, m. */
    double radius() {
        return Math.max(through, seat) / 2;
    }

    /** The same hole after the plate has been turned a quarter anticlockwise. */
    PlateHole turned() {
        return new PlateHole(name, -y, x, through, seat, depth);
    }
}
