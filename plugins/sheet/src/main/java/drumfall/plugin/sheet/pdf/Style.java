// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.pdf;

/**
 * How a text is set.
 *
 * @param face the font
 * @param size points
 * @param leading from one line to the next, points
 */
record Style(Typeface face, double size, double leading) {}
