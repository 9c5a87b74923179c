// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;

/**
 * Which shortcuts are taken on the way to an answer; none of them changes it, and tests turn them off to show it.
 *
 * @param taken the shortcuts
 * @param search those of the search behind the answer
 */
public record QuestionSettings(Set<QuestionShortcut> taken, SearchSettings search) {
    /** Every shortcut. */
    public static final QuestionSettings USUAL =
            new QuestionSettings(EnumSet.allOf(QuestionShortcut.class), SearchSettings.USUAL);

    /** Copies the set. */
    public QuestionSettings {
        taken = Set.copyOf(taken);
    }

    /**
     * These settings less some shortcuts.
     *
     * @param shortcuts not taken
     */
    public QuestionSettings without(QuestionShortcut... shortcuts) {
        Set<QuestionShortcut> left = EnumSet.noneOf(QuestionShortcut.class);
        left.addAll(taken);
        left.removeAll(Arrays.asList(shortcuts));
        return new QuestionSettings(left, search);
    }

    /**
     * These settings less some shortcuts of the search.
     *
     * @param shortcuts not taken
     */
    public QuestionSettings without(Shortcut... shortcuts) {
        return new QuestionSettings(taken, search.without(shortcuts));
    }

    boolean take(QuestionShortcut shortcut) {
        return taken.contains(shortcut);
    }
}
