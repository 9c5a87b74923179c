// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static drumfall.solver.quantity.Dimension.LENGTH;

import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Measure;

/**
 * The bob as it swings: how large it is and how far behind the movement.
 *
 * @param diameter of the bob, a disc in the plane of the swing
 * @param thickness of the bob across that plane
 * @param behindPlate from the rear of the back plate to the middle of the bob
 */
public record BobShell(
        @Measure(value = LENGTH, over = "0 mm", to = "500 mm")
        Quantity diameter,

        @Measure(value = LENGTH, over = "0 mm", to = "200 mm")
        Quantity thickness,

        @Measure(value = LENGTH, over = "0 mm", to = "500 mm")
        Quantity behindPlate) {}
