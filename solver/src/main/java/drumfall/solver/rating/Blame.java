// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

/** What of a train is to blame if it cannot be built. */
public enum Blame {
    /** Its upper half, whatever lower half with as many meshes it is joined to. */
    ABOVE,
    /** Its lower half, whatever upper half with as many meshes it is joined to. */
    BELOW,
    /** Both halves together; each may do beside others. */
    TOGETHER
}
