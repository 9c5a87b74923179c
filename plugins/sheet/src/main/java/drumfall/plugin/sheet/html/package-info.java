// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * Builder's sheets as one web page that is also well-formed XML.
 *
 * <p>May depend on the contents and the drawings. Rejected: a page that asks a network for fonts or scripts; it has to open
 * in a workshop, years later.
 */
package drumfall.plugin.sheet.html;
