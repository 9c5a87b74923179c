// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rules;

import drumfall.solver.halves.HalfJoin;
import drumfall.solver.halves.LowerHalf;
import drumfall.solver.halves.UpperHalf;
import drumfall.solver.rating.CellFront;
import drumfall.solver.rating.NonDominated;
import drumfall.solver.rating.TrainOrder;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.function.Predicate;
import org.chocosolver.solver.constraints.Propagator;
import org.chocosolver.solver.constraints.PropagatorPriority;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.ESat;
import org.chocosolver.util.objects.setDataStructures.iterable.IntIterableBitSet;

/**
 * Keeps only lower halves that can still change the front, once the upper half is fixed.
 *
 * <p>A lower half goes if the join is too heavy, misses a clearance or is too deep for the frame, if the front already has a train as good, or if
 * another lower half left beside the same upper half is as good. Bounds come first; the exact figures, equal to the
 * rating's, decide.
 */
final class FrontRule extends Propagator<IntVar> {
    private final IntVar upper;
    private final IntVar lower;
    private final List<UpperHalf> uppers;
    private final List<LowerHalf> lowers;
    private final HalfJoin join;
    private final CellFront front;
    private final Predicate<Train> placeable;
    private final TrainRater rater;
    private final double[] values;

    FrontRule(
            IntVar upper,
            List<UpperHalf> uppers,
            IntVar lower,
            List<LowerHalf> lowers,
            TrainRater rater,
            CellFront front,
            Predicate<Train> placeable) {
        super(new IntVar[] {upper, lower}, PropagatorPriority.VERY_SLOW, false);
        this.upper = upper;
        this.lower = lower;
        this.uppers = uppers;
        this.lowers = lowers;
        this.rater = rater;
        this.join = new HalfJoin(rater);
        this.front = front;
        this.placeable = placeable;
        this.values = new double[rater.objectives().asked().size()];
    }

    @Override
    public void propagate(int eventMask) throws ContradictionException {
        if (!upper.isInstantiated()) {
            return;
        }
        UpperHalf fixed = uppers.get(upper.getValue());
        NonDominated<Train> beside = new NonDominated<>(rater.objectives().asked(), TrainOrder::byCounts);
        IntIterableBitSet improving = new IntIterableBitSet();
        int last = lower.getUB();
        for (int value = lower.getLB(); value <= last; value = lower.nextValue(value)) {
            if (mayImprove(fixed, lowers.get(value), beside)) {
                improving.add(value);
            }
        }
        if (improving.isEmpty()) {
            fails();
        }
        lower.removeAllValuesBut(improving, this);
    }

    private boolean mayImprove(UpperHalf fixed, LowerHalf half, NonDominated<Train> beside) {
        double least = join.leastRecommendedWeight(fixed, half);
        if (!join.allows(fixed, half, least)) {
            return false;
        }
        join.values(fixed, half, least, values);
        if (!front.mayImprove(values, least)) {
            return false;
        }
        double weight = join.recommendedWeight(fixed, half);
        join.values(fixed, half, weight, values);
        return join.weightKept(fixed, weight)
                && join.teethBear(fixed, half, weight)
                && front.mayImprove(values, weight)
                && beside.mayImprove(values, weight)
                && placed(join.train(fixed, half), weight, beside);
    }

    /** Puts a train beside the others; one without a place for its arbors must not stand in their way. */
    private boolean placed(Train train, double weight, NonDominated<Train> beside) {
        return placeable.test(train) && beside.add(values, weight, train);
    }

    @Override
    public ESat isEntailed() {
        return upper.isInstantiated() && lower.isInstantiated() ? ESat.TRUE : ESat.UNDEFINED;
    }
}
