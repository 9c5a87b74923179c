// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import drumfall.solver.teeth.flank.Roots;

/** The involute function and its inverse. */
public final class Involute {
    private static final double TOLERANCE = 1e-15;
    private static final double WIDEST = 1.5;

    private Involute() {}

    /**
     * The involute function {@code tan a - a}, rad.
     *
     * @param angle profile angle, rad, 0 to below pi/2
     */
    public static double of(double angle) {
        return Math.tan(angle) - angle;
    }

    /**
     * The profile angle whose involute function has a value, rad.
     *
     * @param value value of the function, rad, 0 to 12.6
     * @throws IllegalArgumentException if no angle below 1.5 rad has that value
     */
    public static double inverse(double value) {
        return Roots.find(a -> of(a) - value, 0, WIDEST, TOLERANCE);
    }
}
