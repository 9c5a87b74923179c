// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

/** On which side of the great wheel a drum stands. */
public enum DrumSide {
    /** Between the great wheel and the front plate. */
    BEFORE,
    /** Between the great wheel and the back plate. */
    BEHIND
}
