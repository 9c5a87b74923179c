// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Planes;
import java.util.BitSet;

/**
 * An order of the planes, packed.
 *
 * @param planes where they lie
 * @param meets the pairs of slots that meet
 */
record Stacking(Planes planes, BitSet meets) {
    /** Whether this order can stand for another wherever that one would do. */
    boolean servesFor(Stacking other) {
        return planes.depth() <= other.planes.depth() && meetsOnlyWhere(other);
    }

    private boolean meetsOnlyWhere(Stacking other) {
        for (int pair = meets.nextSetBit(0); pair >= 0; pair = meets.nextSetBit(pair + 1)) {
            if (!other.meets.get(pair)) {
                return false;
            }
        }
        return true;
    }
}
