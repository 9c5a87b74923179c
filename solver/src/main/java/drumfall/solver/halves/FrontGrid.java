// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.brief.Objective;
import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.rating.CellFront;
import drumfall.solver.rating.Objectives;
import drumfall.solver.rating.Rating;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * Sorts half trains by what their parts add to the objectives, into fields that each stand for the least in them, and tells
 * how heavy a train may be that has the parts of a field and of another half.
 *
 * <p>A half is not wanted if no train with it can change the front that has been found so far: such a train is lighter or
 * has less in another objective than the front's best beside it. The front is not copied and must not change meanwhile.
 */
final class FrontGrid {
    /** Few enough fields to be filled quickly, however many figures are told apart. */
    private static final int MOST_FIELDS = 16_384;

    /** A brief has at most four meshes on either side of the centre. */
    private static final int MOST_MESHES = 8;

    /** A small front has few steps to tell apart. */
    private static final int FIELDS_PER_TRAIN = 256;

    private final CellFront front;
    private final Objective[] asked;
    private final Axis[] axes;
    private final int fields;
    private final double reserve;
    private final double limit;

    /** By meshes of a train, then by fields; filled when asked for, maybe by several threads. */
    private final AtomicReferenceArray<double[]> heaviest = new AtomicReferenceArray<>(MOST_MESHES + 1);

    /** A figure cut into equal steps from 0 to the most on the front; everything beyond is in the last one. */
    private record Axis(ObjectiveFigure figure, double most, int steps) {
        int step(PartSums sums) {
            return step(value(figure, sums));
        }

        int step(double value) {
            return (int) Math.max(0, Math.min(steps, Math.floor(value / most * steps)));
        }

        double from(int step) {
            return step * most / steps * (1 - 1e-9);
        }
    }

    /**
     * A grid for a front.
     *
     * @param rules what both halves share
     * @param front what has been found
     */
    FrontGrid(HalfRules rules, CellFront front) {
        this.front = front;
        this.asked = rules.rater.objectives().asked().toArray(Objective[]::new);
        this.reserve = rules.rater.objectives().recommended(1);
        this.limit = rules.limits.heaviestRecommendedWeight();
        List<Rating> ratings = front.ratings();
        List<Integer> told = new ArrayList<>();
        for (int i = 0; i < asked.length; i++) {
            if (isOfParts(asked[i].figure())) {
                told.add(i);
            }
        }
        double most = Math.min(MOST_FIELDS, FIELDS_PER_TRAIN * (double) ratings.size());
        int steps = (int) Math.pow(most, 1.0 / Math.max(1, told.size())) - 1;
        int count = 1;
        List<Axis> cut = new ArrayList<>();
        for (int index : told) {
            double largest = ratings.stream()
                    .mapToDouble(rating -> rating.objectiveValues().get(index))
                    .max()
                    .orElse(0);
            if (largest > 0) {
                cut.add(new Axis(asked[index].figure(), largest, steps));
                count *= steps + 1;
            }
        }
        this.axes = cut.toArray(Axis[]::new);
        this.fields = count;
    }

    /** Whether halves are told apart by a figure. */
    private static boolean isOfParts(ObjectiveFigure figure) {
        return switch (figure) {
            case FILAMENT_MASS, LARGEST_WHEEL, CENTRE_DISTANCES -> true;
            case RECOMMENDED_WEIGHT, MESHES, MODULES, DURATION_ERROR -> false;
        };
    }

    /** A figure that halves are told apart by, SI units. */
    private static double value(ObjectiveFigure figure, PartSums sums) {
        return switch (figure) {
            case FILAMENT_MASS -> Objectives.kilograms(sums.filament());
            case LARGEST_WHEEL -> 2 * sums.largestTip();
            default -> Objectives.metres(sums.centreDistances());
        };
    }

    /** Number of fields. */
    int fields() {
        return fields;
    }

    /** The field of a half, from 0. */
    int field(PartSums sums) {
        int field = 0;
        for (Axis axis : axes) {
            field = field * (axis.steps + 1) + axis.step(sums);
        }
        return field;
    }

    /** What no half in a field undercuts; its modules are unknown. */
    PartSums least(int field) {
        double filament = 0;
        double tip = 0;
        double centres = 0;
        int left = field;
        for (int i = axes.length - 1; i >= 0; i--) {
            Axis axis = axes[i];
            double from = axis.from(left % (axis.steps + 1));
            left /= axis.steps + 1;
            switch (axis.figure) {
                case FILAMENT_MASS -> filament = from / Objectives.kilograms(1);
                case LARGEST_WHEEL -> tip = from / 2;
                default -> centres = from / Objectives.metres(1);
            }
        }
        return new PartSums((long) filament, tip, (long) centres, 0);
    }

    /**
     * The heaviest least running weight with which a train may still change the front.
     *
     * @param sums of all its parts, or less
     * @param meshes of the train
     * @return kg, a little too much rather than too little; may be infinite, or negative if at no weight
     */
    double heaviestLeast(PartSums sums, int meshes) {
        double[] ofMeshes = heaviest.get(meshes);
        if (ofMeshes == null) {
            ofMeshes = heaviestOf(meshes);
            heaviest.set(meshes, ofMeshes);
        }
        return ofMeshes[field(sums)];
    }

    /** The heaviest least running weight that any train may have, whatever its parts add; kg, a little too much. */
    double mostLeast() {
        return limit / reserve * (1 + 1e-9);
    }

    private double[] heaviestOf(int meshes) {
        double[] weights = new double[fields];
        double[] values = new double[asked.length];
        for (int field = 0; field < fields; field++) {
            HalfJoin.write(asked, least(field), meshes, 0, 0, values);
            weights[field] = Math.min(front.heaviest(values), limit) / reserve * (1 + 1e-9);
        }
        return weights;
    }
}
