// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

/** What a length does to the end shake. */
public enum Direction {
    /** It holds the plates apart: pillars, counterbores. */
    OPENS(1),
    /** It stands on the arbor between the plates: wheels, pinions, collars, spacers. */
    FILLS(-1);

    private final int sign;

    Direction(int sign) {
        this.sign = sign;
    }

    int sign() {
        return sign;
    }
}
