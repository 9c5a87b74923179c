// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
/**
 * Line drawings of printed parts at their true size.
 *
 * <p>May depend on the solver's solids and outlines. Rejected: handing the arcs themselves to every kind of page; paper
 * shows no more than a tenth of a millimetre, and one kind of line keeps every writer small.
 */
package drumfall.plugin.sheet.draw;
