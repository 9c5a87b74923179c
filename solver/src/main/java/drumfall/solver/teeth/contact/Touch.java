// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

/** Which parts of the two teeth touch. */
public enum Touch {
    /** Both flanks, with a common normal. */
    FLANKS,
    /** A corner of the driver, as its tip, on the follower's flank. */
    DRIVER_CORNER,
    /** A corner of the follower, as its tip, on the driver's flank. */
    FOLLOWER_CORNER
}
