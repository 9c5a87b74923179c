// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import java.util.List;

/**
 * The minimal clashes of a brief.
 *
 * @param list the clashes, those of fewest demands first; empty if the brief has trains, or if the time was over before
 *     anything was known
 * @param complete whether it is proved that there are no others
 */
public record Clashes(List<MinimalClash> list, boolean complete) {
    /** Copies the list. */
    public Clashes {
        list = List.copyOf(list);
    }

    /** Whether it is proved that trains meet the whole brief. */
    public boolean none() {
        return complete && list.isEmpty();
    }
}
