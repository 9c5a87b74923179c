// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

/**
 * The shell of a bob: a disc in the plane of its swing.
 *
 * @param diameter m, positive
 * @param thickness of the whole bob across the plane of the swing, m, positive
 */
public record BobSize(double diameter, double thickness) {
    /** Thickness of a bob over its diameter; common practice, no source. */
    public static final double PROPORTION = 0.2;

    /** Shell and shot together are denser than this, kg/m&sup3;; tested against the bobs that are made. */
    public static final double SURELY_DENSER = 1300;

    /** A bob is no thinner than a rod and walls beside it, m; tested against the bobs that are made. */
    public static final double THINNEST = 0.0105;

    /**
     * Room for any bob that is made of a mass, as small as holds its shot.
     *
     * @param mass kg, positive
     */
    public static BobSize roomFor(double mass) {
        double diameter = Math.cbrt(4 * mass / (Math.PI * PROPORTION * SURELY_DENSER));
        return new BobSize(diameter, Math.max(THINNEST, PROPORTION * diameter));
    }
}
