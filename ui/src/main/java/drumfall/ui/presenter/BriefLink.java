// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

/**
 * Words that lead to a place of the brief.
 *
 * @param words in the brief's words
 * @param pointer JSON pointer of the place
 */
public record BriefLink(String words, String pointer) {}
