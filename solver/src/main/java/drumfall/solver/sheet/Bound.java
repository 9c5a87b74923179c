// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

/**
 * One end of a range, as the maker reads it.
 *
 * @param text the bound as written, with its unit
 * @param included whether the bound itself is allowed
 */
public record Bound(String text, boolean included) {}
