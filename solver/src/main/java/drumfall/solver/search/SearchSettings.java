// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;

/**
 * Which shortcuts a search takes, none of which changes its front, as tests show that turn them off; and how large its front
 * may become.
 *
 * @param taken the shortcuts
 * @param mostTrains a front with more trains is thinned: the search begins anew with objectives told apart in steps twice as
 *     large, and again, until the front has no more; at least 1
 */
public record SearchSettings(Set<Shortcut> taken, int mostTrains) {
    /** Nobody chooses among more trains, and what is kept of each half beside so many still goes into a small memory. */
    public static final int MOST_TRAINS = 1000;

    /** Every shortcut. */
    public static final SearchSettings USUAL = new SearchSettings(EnumSet.allOf(Shortcut.class), MOST_TRAINS);

    /** A front of fewer trains could be one that no larger steps thin. */
    private static final int FEWEST = 10;

    /**
     * Copies the set.
     *
     * @throws IllegalArgumentException if the front may hold fewer than ten trains
     */
    public SearchSettings {
        if (mostTrains < FEWEST) {
            throw new IllegalArgumentException("A front must be allowed at least %d trains, not %d. Maybe allow %d."
                    .formatted(FEWEST, mostTrains, MOST_TRAINS));
        }
        taken = Set.copyOf(taken);
    }

    /**
     * These settings less some shortcuts.
     *
     * @param shortcuts not taken
     */
    public SearchSettings without(Shortcut... shortcuts) {
        Set<Shortcut> left = EnumSet.noneOf(Shortcut.class);
        left.addAll(taken);
        left.removeAll(Arrays.asList(shortcuts));
        return new SearchSettings(left, mostTrains);
    }

    /**
     * These settings with another limit on the front.
     *
     * @param trains at least 1
     */
    public SearchSettings thinnedAbove(int trains) {
        return new SearchSettings(taken, trains);
    }

    boolean take(Shortcut shortcut) {
        return taken.contains(shortcut);
    }
}
