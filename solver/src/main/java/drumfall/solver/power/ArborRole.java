// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

/** What an arbor is in the train; each role has supports and a build of its own. */
public enum ArborRole {
    /** Carries the drum and the great wheel. */
    DRUM,
    /** Stands between the drum and the centre, or between the centre and the escape arbor. */
    INTERMEDIATE,
    /** Turns once an hour and carries the minute hand. */
    CENTRE,
    /** Carries the escape wheel. */
    ESCAPE
}
