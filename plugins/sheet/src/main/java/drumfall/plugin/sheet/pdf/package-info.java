// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * Builder's sheets and paper templates as documents to print.
 *
 * <p>A column runs from page to page; tables and drawings are set into it by classes of their own. Text is Roboto, embedded
 * as far as it is used. May depend on the contents, the drawings and PDFBox, which comes with the jar. Rejected: printing
 * the web page through a browser, which moves every line with its version; and the reader's own fonts, which change every
 * width.
 */
package drumfall.plugin.sheet.pdf;
