// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import drumfall.solver.rating.Rating;
import java.util.Optional;

/**
 * What easing one figure would buy.
 *
 * @param step the figure and its change
 * @param best the lightest train of the changed brief that is no worse than the chosen one in every other objective; absent
 *     if it does not exist, as it can where the change hardens other demands
 * @param gain recommended weight of the chosen train less that of the best one, kg; 0 if none is lighter by a cell
 * @param proved whether the changed brief was searched to the end
 */
public record Cost(CostStep step, Optional<Rating> best, double gain, boolean proved) {}
