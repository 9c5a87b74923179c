// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rules;

import java.util.function.BooleanSupplier;
import org.chocosolver.solver.constraints.Propagator;
import org.chocosolver.solver.constraints.PropagatorPriority;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.ESat;

/** Keeps a claim about some variables: asked when all are fixed, and for each value of the last one left. */
final class ClaimRule extends Propagator<IntVar> {
    /** A claim about the values of the variables, in their order. */
    interface Claim {
        boolean holds(int[] values);
    }

    private final Claim claim;
    private final int[] values;

    ClaimRule(Claim claim, IntVar... variables) {
        super(variables, PropagatorPriority.LINEAR, false);
        this.claim = claim;
        this.values = new int[variables.length];
    }

    @Override
    public void propagate(int eventMask) throws ContradictionException {
        int open = -1;
        for (int i = 0; i < vars.length; i++) {
            if (vars[i].isInstantiated()) {
                values[i] = vars[i].getValue();
            } else if (open >= 0) {
                return;
            } else {
                open = i;
            }
        }
        if (open < 0) {
            require(() -> claim.holds(values));
        } else {
            filter(open);
        }
    }

    private void require(BooleanSupplier holds) throws ContradictionException {
        if (!holds.getAsBoolean()) {
            fails();
        }
    }

    private void filter(int open) throws ContradictionException {
        IntVar variable = vars[open];
        int last = variable.getUB();
        for (int value = variable.getLB(); value <= last; value = variable.nextValue(value)) {
            values[open] = value;
            if (!claim.holds(values)) {
                variable.removeValue(value, this);
            }
        }
    }

    @Override
    public ESat isEntailed() {
        for (int i = 0; i < vars.length; i++) {
            if (!vars[i].isInstantiated()) {
                return ESat.UNDEFINED;
            }
            values[i] = vars[i].getValue();
        }
        return ESat.eval(claim.holds(values));
    }
}
