// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

/** Which of the possible places of the arbors are preferred. */
public enum Arrangement {
    /** Arbors near one vertical. */
    UPRIGHT,
    /** Least height of the movement. */
    COMPACT,
    /** As far to the left of the dial's vertical as to the right. */
    SYMMETRIC,
    /** Least depth. */
    SHALLOW,
    /**
     * Trains are listed whether or not their arbors have places; the frame's demand is then only that each wheel and its
     * pinion find room. For playing with counts before there is a frame.
     */
    UNPLACED
}
