// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

/**
 * One line that tells the maker what happened.
 *
 * @param text one sentence; empty if there is nothing to tell
 * @param trouble whether something went wrong
 */
public record News(String text, boolean trouble) {
    /** Nothing to tell. */
    public static final News NONE = new News("", false);

    static News told(String text) {
        return new News(text, false);
    }

    static News trouble(String text) {
        return new News(text, true);
    }
}
