// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

/** Sizes of drill that builders have. */
public enum Drills {
    /** Metric sizes. */
    METRIC,
    /** Fractions of an inch. */
    INCH,
    /** Both; the nearest size of either is named. */
    METRIC_AND_INCH
}
