// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

/** The phrases of this package. */
final class Words {
    static final PhraseBook BOOK = PhraseBook.of("drumfall.ui.wording.wording");

    private Words() {}
}
