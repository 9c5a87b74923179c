// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import drumfall.solver.making.solid.SizeLimitException;

/**
 * What a printer makes of walls, steps and fits.
 *
 * @param extrusion width of one extrusion, m, positive
 * @param layer height of a layer, m, positive
 * @param fit play left all round between printed parts that go into each other, m, not negative
 */
public record PrintSizes(double extrusion, double layer, double fit) {
    private static final double SMALLEST = 1e-5;

    /** Why a wall is refused. */
    static final String TWO_WIDTHS = "two extrusion widths";

    /**
     * Checks the sizes.
     *
     * @throws SizeLimitException if one is out of its range
     */
    public PrintSizes {
        SizeLimitException.atLeast("extrusion width of a printer", extrusion, SMALLEST, "for anything to be laid");
        SizeLimitException.atLeast("layer height of a printer", layer, SMALLEST, "for anything to be laid");
        SizeLimitException.atLeast("fit of printed parts", fit, 0, "since parts cannot overlap");
    }

    /** The thinnest wall: two extrusion widths (common practice, no source), m. */
    public double wall() {
        return 2 * extrusion;
    }

    /**
     * Refuses a wall that is too thin.
     *
     * @param subject the wall and its part
     * @param value its thickness, m
     */
    void requireWall(String subject, double value) {
        SizeLimitException.atLeast(subject, value, wall(), TWO_WIDTHS);
    }

    /**
     * Refuses a height below one layer.
     *
     * @param subject the height and its part
     * @param value m
     */
    void requireHeight(String subject, double value) {
        SizeLimitException.atLeast(subject, value, layer, "one layer");
    }
}
