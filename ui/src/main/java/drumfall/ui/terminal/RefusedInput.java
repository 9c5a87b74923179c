// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import java.util.List;

/** Ends a command whose input is not in order. */
final class RefusedInput extends RuntimeException {
    private final transient List<String> sentences;

    /** Refuses with one sentence for each problem. */
    RefusedInput(List<String> sentences) {
        super(String.join(" ", sentences));
        this.sentences = List.copyOf(sentences);
    }

    /** Refuses with a phrase of the terminal. */
    static RefusedInput of(String key, Object... values) {
        return new RefusedInput(List.of(Phrases.BOOK.phrase("refused." + key, values)));
    }

    List<String> sentences() {
        return sentences;
    }
}
