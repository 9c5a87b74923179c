// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.kit;

/**
 * Something to buy.
 *
 * @param what such as {@code steel rod}
 * @param size such as {@code 2 mm × 1 m}
 * @param perClock how many one clock takes, or a measure with its unit such as {@code 3.14 m}
 * @param forAll the same for all clocks that are built at once
 * @param why what it is for
 */
public record Item(String what, String size, String perClock, String forAll, String why) {}
