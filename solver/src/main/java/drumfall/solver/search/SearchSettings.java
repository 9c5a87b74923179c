// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;

/**
 * Which shortcuts a search takes; none of them changes its front, and tests turn them off to show it.
 *
 * @param taken the shortcuts
 */
public record SearchSettings(Set<Shortcut> taken) {
    /** Every shortcut. */
    public static final SearchSettings USUAL = new SearchSettings(EnumSet.allOf(Shortcut.class));

    /** Copies the set. */
    public SearchSettings {
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
        return new SearchSettings(left);
    }

    boolean take(Shortcut shortcut) {
        return taken.contains(shortcut);
    }
}
