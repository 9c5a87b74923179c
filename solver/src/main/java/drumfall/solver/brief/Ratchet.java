// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static drumfall.solver.quantity.Dimension.LENGTH;

import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Count;
import drumfall.solver.sheet.Measure;

/**
 * The ratchet that holds the drum to the great wheel by its click.
 *
 * @param teeth number of teeth
 * @param toothDepth depth of the teeth
 * @param thickness of ratchet and click, within the room for them along the arbor
 */
public record Ratchet(
        @Count(from = 8, to = 90) int teeth,

        @Measure(value = LENGTH, over = "0 mm", to = "20 mm")
        Quantity toothDepth,

        @Measure(value = LENGTH, over = "0 mm", to = "50 mm")
        Quantity thickness) {}
