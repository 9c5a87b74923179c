// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * The map of all sets of demands, on which what is known of them is marked off.
 *
 * <p>A set is still open if it holds no clash known so far and is not within a set known to be met. Of the sets around a
 * clash none but itself is minimal, and within a set that is met nothing clashes; so no minimal clash is marked off unknown,
 * and once nothing is open all of them are known. An open set is looked for by leaving out of all demands one of each
 * clash, in every way until one leads to an open set: every open set misses one of each, and what is within a set that is
 * met is so whatever else is left out.
 */
final class ClashMap {
    private final long all;
    private final List<Long> clashes = new ArrayList<>();
    private final List<Long> met = new ArrayList<>();

    ClashMap(long all) {
        this.all = all;
    }

    /** Marks off everything around a clash. */
    void clash(long set) {
        clashes.add(set);
    }

    /** Marks off everything within a set. */
    void met(long set) {
        met.add(set);
    }

    /** An open set, or nothing if every set is marked off. */
    OptionalLong open() {
        return open(all);
    }

    /** Few clashes are ever known, so that going through what may be left out of each takes no time. */
    private OptionalLong open(long set) {
        if (met.stream().anyMatch(known -> (set & ~known) == 0)) {
            return OptionalLong.empty();
        }
        for (long clash : clashes) {
            if ((clash & ~set) == 0) {
                return withoutOneOf(clash, set);
            }
        }
        return OptionalLong.of(set);
    }

    private OptionalLong withoutOneOf(long clash, long set) {
        for (long rest = clash; rest != 0; rest &= rest - 1) {
            OptionalLong found = open(set & ~Long.lowestOneBit(rest));
            if (found.isPresent()) {
                return found;
            }
        }
        return OptionalLong.empty();
    }
}
