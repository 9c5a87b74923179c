// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

/**
 * The most that a layout may measure.
 *
 * @param wish what it is measured by
 * @param most nm, for the area of a plate nm&sup2;
 */
public record SizeLimit(Wish wish, long most) {}
