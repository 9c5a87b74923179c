// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

/**
 * Which shortcuts a search takes; none of them changes its front, and tests turn them off to show it.
 *
 * @param listHalves whether half trains are listed before the model joins them
 * @param thinHalves whether halves that another one replaces are left out of the lists
 * @param packPlanes whether halves and joins too deep for the frame are left out before anything is placed
 */
public record SearchSettings(boolean listHalves, boolean thinHalves, boolean packPlanes) {
    /** Every shortcut. */
    public static final SearchSettings USUAL = new SearchSettings(true, true, true);
}
