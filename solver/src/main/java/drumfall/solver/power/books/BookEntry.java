// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.books;

/**
 * Power that goes to one place.
 *
 * @param place the place
 * @param number of the mesh or arbor, both from 0 at the drum; 0 where there is only one such place
 * @param power W, not negative
 */
public record BookEntry(Place place, int number, double power) {}
