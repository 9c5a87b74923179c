// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static drumfall.solver.quantity.Dimension.LENGTH;

import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Measure;

/**
 * Four pillars, one in each corner of the frame.
 *
 * @param diameter of each
 * @param sideInset from the frame's left or right edge to the pillar's axis
 * @param endInset from the frame's upper or lower edge to the pillar's axis
 */
public record FramePillars(
        @Measure(value = LENGTH, over = "0 mm", to = "100 mm")
        Quantity diameter,

        @Measure(value = LENGTH, over = "0 mm", to = "500 mm")
        Quantity sideInset,

        @Measure(value = LENGTH, over = "0 mm", to = "500 mm")
        Quantity endInset) {}
