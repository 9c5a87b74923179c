// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import java.util.List;

/**
 * The rods of one diameter and their cuts.
 *
 * @param stock what is bought
 * @param cuts all cuts, in the order to make them
 * @param lowerBound a number of rods below which no plan exists
 */
public record RodPlan(RodStock stock, List<RodCut> cuts, int lowerBound) {
    /** Copies the cuts. */
    public RodPlan {
        cuts = List.copyOf(cuts);
    }

    /** Rods to buy. */
    public int rods() {
        return cuts.stream().mapToInt(RodCut::rods).sum();
    }

    /** Whether no plan with fewer rods exists; if false, the plan is the best that was found. */
    public boolean provenLeast() {
        return rods() == lowerBound;
    }
}
