// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static drumfall.solver.quantity.Dimension.NUMBER;

import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Measure;
import java.util.Optional;

/**
 * The shape of teeth as far as it is fixed, in modules.
 *
 * @param pinionShift profile shift of an involute pinion; the wheel has the opposite one
 * @param wheelAddendum height of an involute wheel's tips above the pitch circle
 * @param pinionAddendum height of the tips of an involute or cycloidal pinion above the pitch circle
 * @param practicalAddendum part of the theoretical addendum of a cycloidal wheel that is in use
 * @param wheelThickness tooth of a cycloidal wheel along the pitch circle
 * @param leafThickness leaf of a cycloidal pinion along the pitch circle
 * @param pinDiameter diameter of a lantern pinion's pins
 */
public record ToothShape(
        @Measure(value = NUMBER, from = "-0.6", to = "0.7") Optional<Quantity> pinionShift,

        @Measure(value = NUMBER, from = "0.1", to = "1.8") Optional<Quantity> wheelAddendum,

        @Measure(value = NUMBER, from = "0.1", to = "1.8") Optional<Quantity> pinionAddendum,

        @Measure(value = NUMBER, from = "0.4", to = "0.97") Optional<Quantity> practicalAddendum,

        @Measure(value = NUMBER, from = "1.4", to = "1.7") Optional<Quantity> wheelThickness,

        @Measure(value = NUMBER, from = "0.9", to = "1.4") Optional<Quantity> leafThickness,

        @Measure(value = NUMBER, from = "0.9", to = "1.6") Optional<Quantity> pinDiameter) {}
