// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.layer;

/** Which whole number of layers stands for a height between two. */
public enum LayerRounding {
    /** The next lower. */
    DOWN,
    /** The next higher. */
    UP,
    /** The nearer of both; the higher one if the asked height lies in the middle. */
    NEAREST
}
