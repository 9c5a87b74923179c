// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.rating.CellFront;
import java.util.Comparator;
import java.util.List;

/**
 * Whether a lower half can bring anything to the front: beside the best of each group of upper halves its train must be
 * light enough for its other figures. May be shared between threads, which may both work out a field.
 */
final class LowerProspects {
    private final FrontGrid grid;
    private final Upper[] uppers;
    private final int count;
    private final Limit[] limits;

    /** Torques on the centre arbor that are not too much beside some group, N m. */
    private record Limit(double running, double binding) {}

    /**
     * A group of upper halves.
     *
     * @param best of the group
     * @param mostRunning torque on the centre arbor when running that is surely too much if exceeded, N m
     * @param mostBinding the same when binding; of this group and of all behind it
     */
    private record Upper(UpperBest best, double mostRunning, double mostBinding) {}

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
        this.uppers = inOrder(uppers);
        this.count = count;
        this.limits = new Limit[grid.fields()];
    }

    /** Those that could bear most first, so that few must be looked at. */
    private Upper[] inOrder(List<UpperBest> groups) {
        Upper[] ordered = groups.stream()
                .map(best -> {
                    double heaviest = Math.min(best.carried(), grid.mostLeast());
                    return new Upper(best, running(best, heaviest), binding(best, heaviest));
                })
                .sorted(Comparator.comparingDouble(Upper::mostRunning).reversed())
                .toArray(Upper[]::new);
        for (int i = ordered.length - 2; i >= 0; i--) {
            Upper upper = ordered[i];
            ordered[i] =
                    new Upper(upper.best, upper.mostRunning, Math.max(upper.mostBinding, ordered[i + 1].mostBinding));
        }
        return ordered;
    }

    private static double running(UpperBest upper, double weight) {
        return (weight - upper.line().running()) / upper.line().runningSlope();
    }

    private static double binding(UpperBest upper, double weight) {
        return (weight - upper.line().binding()) / upper.line().bindingSlope();
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
        for (Upper upper : uppers) {
            if (upper.mostRunning <= running && upper.mostBinding <= binding) {
                break;
            }
            UpperBest best = upper.best;
            double heaviest =
                    Math.min(best.carried(), grid.heaviestLeast(sums.with(best.sums()), best.meshes() + count));
            running = Math.max(running, running(best, heaviest));
            binding = Math.max(binding, binding(best, heaviest));
        }
        return new Limit(running, binding);
    }
}
