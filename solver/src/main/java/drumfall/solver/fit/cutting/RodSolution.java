// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import java.util.List;

/**
 * Rods as counts of each kind of piece, and a proven bound.
 *
 * @param patterns one for each rod
 * @param lowerBound number of rods below which none can do
 */
record RodSolution(List<int[]> patterns, int lowerBound) {
    /** Copies the list. */
    RodSolution {
        patterns = List.copyOf(patterns);
    }
}
