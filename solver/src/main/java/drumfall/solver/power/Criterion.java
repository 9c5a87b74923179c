// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

/** The two things a weight must do. */
public enum Criterion {
    /** The torque the pendulum feels keeps its arc; kinetic friction, each mesh as its speed lets it be felt. */
    RUNNING,
    /** Every mesh at its worst phase at once, static friction, still leaves the stated reserve. */
    BINDING
}
