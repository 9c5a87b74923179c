// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

/** What a search may do to be quicker; none of it changes the front. */
public enum Shortcut {
    /** Half trains are listed before the model joins them. */
    LIST_HALVES,
    /** Halves that another one replaces are left out of the lists; see {@link drumfall.solver.halves}. */
    THIN_HALVES,
    /** Halves are left out if no train with them can change the front found so far. */
    KEEP_TO_FRONT,
    /** Halves whose trains would make the front if all had places are joined before the others. */
    BEST_FIRST,
    /** Halves and joins too deep for the frame are left out before anything is placed. */
    PACK_PLANES,
    /** Halves joined in an earlier round are not joined again; see {@link drumfall.solver.rating.Refused}. */
    JOIN_ONCE,
    /** What is known of larger room is taken over where trains are sought that take less; see {@link RoomSearch}. */
    CARRY_OVER
}
