// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rules;

import org.chocosolver.solver.constraints.Propagator;
import org.chocosolver.solver.constraints.PropagatorPriority;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.ESat;

/**
 * Keeps a ratio of products within bounds: {@code from <= ∏ over / ∏ under <= to}.
 *
 * <p>Products are kept in {@code double}, whose rounding stays below 1e-14 for the few counts of a train; the bounds are
 * widened by a thousand times that, so no allowed value is removed. What lies in the margin is left to the exact claim on
 * the same counts.
 */
final class RatioRule extends Propagator<IntVar> {
    private static final double MARGIN = 1e-11;

    private final int overs;
    private final double from;
    private final double to;

    /**
     * The rule.
     *
     * @param over counts multiplied, each at least 1
     * @param under counts divided by, each at least 1
     * @param from least ratio
     * @param to greatest ratio
     */
    RatioRule(IntVar[] over, IntVar[] under, double from, double to) {
        super(join(over, under), PropagatorPriority.LINEAR, false);
        this.overs = over.length;
        this.from = from * (1 - MARGIN);
        this.to = to * (1 + MARGIN);
    }

    private static IntVar[] join(IntVar[] over, IntVar[] under) {
        IntVar[] all = new IntVar[over.length + under.length];
        System.arraycopy(over, 0, all, 0, over.length);
        System.arraycopy(under, 0, all, over.length, under.length);
        return all;
    }

    @Override
    public void propagate(int eventMask) throws ContradictionException {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < vars.length; i++) {
                changed |= i < overs ? tightenOver(i) : tightenUnder(i);
            }
        }
    }

    private boolean tightenOver(int index) throws ContradictionException {
        boolean raised = vars[index].updateLowerBound(ceil(from / largest(index)), this);
        boolean lowered = vars[index].updateUpperBound(floor(to / smallest(index)), this);
        return raised || lowered;
    }

    private boolean tightenUnder(int index) throws ContradictionException {
        boolean raised = vars[index].updateLowerBound(ceil(smallest(index) / to), this);
        boolean lowered = vars[index].updateUpperBound(floor(largest(index) / from), this);
        return raised || lowered;
    }

    private static int ceil(double bound) {
        return (int) Math.min(IntVar.MAX_INT_BOUND, Math.ceil(bound * (1 - MARGIN)));
    }

    private static int floor(double bound) {
        return (int) Math.min(IntVar.MAX_INT_BOUND, Math.floor(bound * (1 + MARGIN)));
    }

    /** The largest ratio without one variable. */
    private double largest(int without) {
        double ratio = 1;
        for (int i = 0; i < vars.length; i++) {
            if (i != without) {
                ratio = i < overs ? ratio * vars[i].getUB() : ratio / vars[i].getLB();
            }
        }
        return ratio;
    }

    /** The smallest ratio without one variable. */
    private double smallest(int without) {
        double ratio = 1;
        for (int i = 0; i < vars.length; i++) {
            if (i != without) {
                ratio = i < overs ? ratio * vars[i].getLB() : ratio / vars[i].getUB();
            }
        }
        return ratio;
    }

    @Override
    public ESat isEntailed() {
        double least = smallest(-1);
        double most = largest(-1);
        if (least > to || most < from) {
            return ESat.FALSE;
        }
        return least >= from && most <= to ? ESat.TRUE : ESat.UNDEFINED;
    }
}
