// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

import java.util.List;

/**
 * The walk under one criterion.
 *
 * @param criterion the criterion
 * @param arbors needs of the arbors from the drum to the escape wheel
 * @param tension of the line at the drum, N
 * @param weight smallest weight that meets the criterion, kg; infinite if none does
 */
public record PowerPath(Criterion criterion, List<ArborNeed> arbors, double tension, double weight) {
    /** Copies the list. */
    public PowerPath {
        arbors = List.copyOf(arbors);
    }
}
