// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Part;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import java.util.Optional;

/** Keeps, of all refused arrangements with most arbors in place, the one that lacked least. */
final class NearMiss {
    private int level = -1;
    private long least;
    private Shortfall closest;

    /**
     * Notes a refusal.
     *
     * @param placed arbors that stood already
     * @param second another part, or null
     */
    void note(int placed, Rule rule, Part first, Part second, long asked, long found) {
        long amount = Math.abs(asked - found);
        if (placed > level || (placed == level && amount < least)) {
            level = placed;
            least = amount;
            closest = new Shortfall(rule, first, Optional.ofNullable(second), asked, found);
        }
    }

    Shortfall closest() {
        return closest;
    }
}
