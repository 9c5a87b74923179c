// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;
import drumfall.solver.fit.layer.LayerGrid;
import drumfall.solver.fit.layer.LayerRounding;

/**
 * What all bores and seats of a movement share.
 *
 * @param finish drills, skim and shrinkage
 * @param runningClearance of an arbor in a bore, nm
 * @param seatClearance of a bearing in its seat, nm, negative for a press fit
 * @param grid the printer's layers, for the depth of seats
 * @param depthRounding which way a bearing's width goes to whole layers
 */
public record SeatingRules(
        Finish finish, long runningClearance, long seatClearance, LayerGrid grid, LayerRounding depthRounding) {
    /**
     * A plain bore for a pivot.
     *
     * @param pivot the pivot
     * @throws FitException if no drill serves
     */
    public Seating plain(Pivot pivot) {
        return new Seating.Plain(pivot, FinishedHole.bore(pivot.place(), pivot.diameter(), runningClearance, finish));
    }

    /**
     * A seat and its bearing for a pivot.
     *
     * @param pivot the pivot
     * @param bearing the bearing
     * @throws FitException if the arbor does not enter the bearing or no drill serves
     */
    public Seating.Rolling rolling(Pivot pivot, Bearing bearing) {
        if (pivot.diameter() > bearing.bore()) {
            String rule = "be at most the bore of bearing (%s), %s"
                    .formatted(bearing.name(), Nanometres.text(bearing.bore()));
            String maybe = "take an arbor of " + Nanometres.text(bearing.bore()) + " or a larger bearing";
            throw FitException.refused(
                    "diameter", Nanometres.text(pivot.diameter()), "pivot (" + pivot.place() + ")", rule, maybe);
        }
        FinishedHole hole = FinishedHole.seat(pivot.place(), bearing, seatClearance, finish);
        String owner = "seat (" + pivot.place() + ")";
        return new Seating.Rolling(pivot, hole, bearing, grid.snap(bearing.width(), depthRounding, owner));
    }
}
