// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Count;
import drumfall.solver.sheet.Measure;
import java.util.Optional;

/**
 * What is held fast of one mesh.
 *
 * @param place which mesh
 * @param wheel teeth of the wheel
 * @param leaves leaves of the pinion
 * @param module the module
 */
public record MeshLock(
        MeshPlace place,
        @Count(from = 6, to = 300) Optional<Integer> wheel,
        @Count(from = 5, to = 60) Optional<Integer> leaves,

        @Measure(value = Dimension.LENGTH, from = "0.2 mm", to = "20 mm")
        Optional<Quantity> module) {}
