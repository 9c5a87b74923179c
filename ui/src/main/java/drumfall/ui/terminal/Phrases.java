// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.ui.wording.PhraseBook;

/** The phrases of this package. */
final class Phrases {
    static final String BUNDLE = "drumfall.ui.terminal.terminal";
    static final PhraseBook BOOK = PhraseBook.of(BUNDLE);

    private Phrases() {}

    static String phrase(String key, Object... values) {
        return BOOK.phrase(key, values);
    }
}
