// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

/** What may be wished of a layout; each is measured in nanometres, the plate in square nanometres, less is better. */
public enum Wish {
    /** Arbors near one vertical: the distance across from the leftmost arbor to the rightmost, minute arbor left out. */
    UPRIGHT,
    /** Least height of the parts. */
    COMPACT,
    /** Parts reach as far to the left of the dial's vertical as to the right: the difference of the two. */
    SYMMETRIC,
    /** Least depth over plates and motion work. */
    SHALLOW,
    /** Least width of the parts. */
    NARROW,
    /** Least area of the smallest upright plate that covers the parts, pillars left out. */
    SMALL_PLATE
}
