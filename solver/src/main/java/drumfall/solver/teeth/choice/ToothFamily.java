// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.choice;

/** The families of tooth forms. */
public enum ToothFamily {
    /** Involute teeth. */
    INVOLUTE,
    /** The clockmaker's cycloidal form. */
    CYCLOIDAL,
    /** A lantern pinion and its wheel; only where the wheel drives. */
    LANTERN
}
