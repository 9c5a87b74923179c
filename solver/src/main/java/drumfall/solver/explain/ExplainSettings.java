// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import drumfall.solver.search.QuestionSettings;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;

/**
 * Which shortcuts an explanation takes; none of them changes it, and tests turn them off to show it.
 *
 * @param taken the shortcuts
 * @param questions those of the questions behind it
 */
record ExplainSettings(Set<ExplainShortcut> taken, QuestionSettings questions) {
    /** Every shortcut. */
    static final ExplainSettings USUAL =
            new ExplainSettings(EnumSet.allOf(ExplainShortcut.class), QuestionSettings.USUAL);

    /** Copies the set. */
    ExplainSettings {
        taken = Set.copyOf(taken);
    }

    /**
     * These settings less some shortcuts.
     *
     * @param shortcuts not taken
     */
    ExplainSettings without(ExplainShortcut... shortcuts) {
        Set<ExplainShortcut> left = EnumSet.noneOf(ExplainShortcut.class);
        left.addAll(taken);
        left.removeAll(Arrays.asList(shortcuts));
        return new ExplainSettings(left, questions);
    }

    /**
     * These settings with other questions.
     *
     * @param other shortcuts of the questions
     */
    ExplainSettings asking(QuestionSettings other) {
        return new ExplainSettings(taken, other);
    }

    boolean take(ExplainShortcut shortcut) {
        return taken.contains(shortcut);
    }
}
