// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.explain.Cost;
import java.util.ArrayList;
import java.util.List;

/**
 * What is known of easing.
 *
 * @param stage how far the answers are
 * @param all how many there will be; 0 if that is not known yet
 * @param costs the answers, in the order in which they came
 */
record EasingState(Inquiry stage, int all, List<Cost> costs) {
    static final EasingState UNASKED = new EasingState(Inquiry.UNASKED, 0, List.of());
    static final EasingState STARTED = new EasingState(Inquiry.BUSY, 0, List.of());

    EasingState {
        costs = List.copyOf(costs);
    }

    EasingState at(Inquiry next) {
        return new EasingState(next, all, costs);
    }

    EasingState outOf(int count) {
        return new EasingState(stage, count, costs);
    }

    EasingState with(Cost cost) {
        List<Cost> more = new ArrayList<>(costs);
        more.add(cost);
        return new EasingState(stage, all, more);
    }
}
