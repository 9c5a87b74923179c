// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * The builder's sheet of a train, as documents to print and as a web page, and paper templates at true size.
 *
 * <p>Contents are worked out first and know no page; {@code pdf} and {@code html} each set the same blocks. May depend on
 * the plugin api and the solver. Rejected: two jars, one for each exporter, which would carry the same fonts twice.
 */
package drumfall.plugin.sheet;
