// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rules;

import java.util.List;
import org.chocosolver.solver.constraints.Propagator;
import org.chocosolver.solver.constraints.PropagatorPriority;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.ESat;

/**
 * Keeps some variables at the values of one row of a list, told by its number.
 *
 * <p>Nothing is removed before the number is fixed, and everything after. The number is decided first, so a table that
 * also reasons from the values to the number would only cost time.
 */
final class ListedRule extends Propagator<IntVar> {
    private final List<int[]> rows;

    /**
     * The rule.
     *
     * @param variables the number of the row, then a variable for each of its values
     * @param rows values, each row of the same length
     */
    ListedRule(IntVar[] variables, List<int[]> rows) {
        super(variables, PropagatorPriority.LINEAR, false);
        this.rows = List.copyOf(rows);
    }

    @Override
    public void propagate(int eventMask) throws ContradictionException {
        if (vars[0].isInstantiated()) {
            int[] row = rows.get(vars[0].getValue());
            for (int i = 0; i < row.length; i++) {
                vars[i + 1].instantiateTo(row[i], this);
            }
        }
    }

    @Override
    public ESat isEntailed() {
        if (!vars[0].isInstantiated()) {
            return ESat.UNDEFINED;
        }
        int[] row = rows.get(vars[0].getValue());
        ESat sure = ESat.TRUE;
        for (int i = 0; i < row.length; i++) {
            if (!vars[i + 1].contains(row[i])) {
                return ESat.FALSE;
            }
            sure = vars[i + 1].isInstantiated() ? sure : ESat.UNDEFINED;
        }
        return sure;
    }
}
