// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.rating.CellFront;
import java.util.List;

/**
 * Whether a lower half can bring anything to the front: beside the best of each group of upper halves its train must be
 * light enough for its other figures. May be shared between threads, which may both work out a field.
 */
final class LowerProspects {
    private final FrontGrid grid;
    private final List<UpperBest> uppers;
    private final int count;
    private final Limit[] limits;

    /** Torques on the centre arbor that are not too much beside some group, N m. */
    private record Limit(double running, double binding) {}

    /**
     * The prospects beside a front.
     *
     * @param rules what both halves share
     * @param front what has been found; must not change meanwhile
     * @param uppers the best that upper halves can be
     * @param count meshes from the centre to the escape wheel
     */
    LowerProspects(HalfRules rules, CellFront front, List<UpperBest> uppers, int count) {
        this.grid = new FrontGrid(rules, front);
        this.uppers = uppers;
        this.count = count;
        this.limits = new Limit[grid.fields()];
    }

    /**
     * Whether no train can change the front whose lower half needs at least so much.
     *
     * @param running torque on the centre arbor when running, N m, or less
     * @param binding the same at the worst of every mesh, or less
     * @param sums what the parts add, or less
     */
    boolean hopeless(double running, double binding, PartSums sums) {
        Limit limit = limit(grid.field(sums));
        return running > limit.running || binding > limit.binding;
    }

    private Limit limit(int field) {
        Limit limit = limits[field];
        if (limit == null) {
            limit = limit(grid.least(field));
            limits[field] = limit;
        }
        return limit;
    }

    private Limit limit(PartSums sums) {
        double running = Double.NEGATIVE_INFINITY;
        double binding = Double.NEGATIVE_INFINITY;
        for (UpperBest upper : uppers) {
            double heaviest =
                    Math.min(upper.carried(), grid.heaviestLeast(sums.with(upper.sums()), upper.meshes() + count));
            running = Math.max(
                    running, (heaviest - upper.line().running()) / upper.line().runningSlope());
            binding = Math.max(
                    binding, (heaviest - upper.line().binding()) / upper.line().bindingSlope());
        }
        return new Limit(running, binding);
    }
}
