// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * Lists for whoever builds the clock: printed parts, holes of both plates, arbors and how to cut them, what to buy,
 * what fewer or more bearings do to the weight.
 *
 * <p>Each list is a table of the kit, written as comma-separated values (RFC 4180) for a spreadsheet and all together as a
 * page to print. The figures are the kit's; nothing is reckoned here. May depend on the plugin api, the solver's records and
 * the JDK. Rejected: one file for each kit of several; the cutting list alone knows how many clocks are cut at once.
 */
package drumfall.plugin.lists;
