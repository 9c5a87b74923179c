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
    /** A size for printed clocks that hang on a wall; common practice, no source. */
    public static final BobSize CUSTOMARY = new BobSize(0.1, 0.02);
}
