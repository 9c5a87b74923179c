// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * What stands on a builder's sheet, worked out for one train; plain records, no page.
 *
 * <p>Each section is one class that asks the solver and puts the answers into blocks; a figure is turned into digits once,
 * here, so that every kind of page shows the same digits. May depend on the plugin api, the solver and the drawings.
 * Rejected: a template with places for figures; half of the rows come and go with the train, and a template that counts
 * arbors is a program in a worse language.
 */
package drumfall.plugin.sheet.content;
