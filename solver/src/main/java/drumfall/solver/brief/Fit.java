// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static drumfall.solver.quantity.Dimension.LENGTH;

import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Count;
import drumfall.solver.sheet.Measure;

/**
 * How bores, end shake and stock are made to measure.
 *
 * @param drills sizes of drill that builders have
 * @param clearance of an arbor in its bore, on the diameter
 * @param seatClearance of a rolling bearing in its seat, on the diameter; negative for a press fit
 * @param skim what a drill is to cut off a printed bore, on the diameter
 * @param shrinkage how much smaller than drawn the printer's bores measure, on the diameter
 * @param endShake wanted of every arbor, a band
 * @param heightError by how much a printed part's height may be off, either way
 * @param firstLayer height of the first layer
 * @param stockRod length of the rods that arbors are cut from
 * @param sawCut width of a cut
 * @param kits clocks that arbors are cut for at once
 */
public record Fit(
        Drills drills,

        @Measure(value = LENGTH, from = "0 mm", to = "1 mm") Quantity clearance,

        @Measure(value = LENGTH, from = "-0.5 mm", to = "1 mm")
        Quantity seatClearance,

        @Measure(value = LENGTH, from = "0.1 mm", to = "0.2 mm")
        Quantity skim,

        @Measure(value = LENGTH, from = "-1 mm", to = "1 mm")
        Quantity shrinkage,

        ShakeBand endShake,

        @Measure(value = LENGTH, from = "0 mm", to = "1 mm") Quantity heightError,

        @Measure(value = LENGTH, over = "0 mm", to = "2 mm") Quantity firstLayer,

        @Measure(value = LENGTH, over = "0 mm", to = "10 m") Quantity stockRod,

        @Measure(value = LENGTH, from = "0 mm", to = "5 mm") Quantity sawCut,

        @Count(from = 1, to = 1000) int kits) {
    /** Metric drills up to 14 mm and 64ths of an inch come at most this far apart, m. */
    private static final double DRILL_STEP = 0.0004;

    /**
     * A band of end shake.
     *
     * @param low the least that will do
     * @param high the most that will do
     */
    public record ShakeBand(
            @Measure(value = LENGTH, from = "0 mm", to = "10 mm")
            Quantity low,

            @Measure(value = LENGTH, over = "0 mm", to = "10 mm")
            Quantity high) {}

    /**
     * The largest bore, as drawn, of what stands on an arbor, m: a turning rod holds it; on a fixed one it runs in the next
     * drill above rod and clearance.
     *
     * @param build how the arbor is built
     */
    public double largestBore(Brief.ArborBuild build) {
        double rod = build.diameter().si();
        return build.kind() == Brief.ArborKind.TURNING ? rod : rod + clearance.si() + shrinkage.si() + DRILL_STEP;
    }
}
