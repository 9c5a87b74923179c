// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.size;

/** The two ways along an arbor. */
public enum Face {
    /** Towards the dial. */
    FRONT,
    /** Towards the back plate. */
    REAR
}
