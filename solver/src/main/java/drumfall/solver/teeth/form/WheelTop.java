// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

/** The curve of a cycloidal wheel's addendum. */
public enum WheelTop {
    /** The exact epicycloid, rolled by a circle of half the pinion's pitch radius. */
    EPICYCLOID,
    /**
     * One arc of 1.40 times the theoretical addendum, from the flank on the pitch circle to a point at
     * 0.95 of that addendum.
     *
     * <p>The radius is that of BS 978-2:1952 (from memory); that it ends in a point at the practical
     * addendum is our reading, which follows the epicycloid closest.
     */
    SINGLE_ARC
}
