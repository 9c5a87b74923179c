// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

/** The version of this program. */
public final class ProgramVersion {
    private ProgramVersion() {}

    /** The version as the build names it, for example {@code 0.1.0}. */
    public static String text() {
        return PhraseBook.of("drumfall.ui.wording.version").phrase("version");
    }
}
