// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Clashes;
import drumfall.solver.explain.Nearest;
import java.util.List;

/**
 * What is known of why a brief has no train.
 *
 * @param brief the brief
 * @param stage how far the explanation is
 * @param clashes the minimal clashes known so far
 * @param listed whether the list of clashes is over, so that its numbers stand
 * @param nearest what easing one figure alone does, as far as it is known
 * @param figures figures that can be eased
 */
record Reasons(Brief brief, Inquiry stage, Clashes clashes, boolean listed, List<Nearest> nearest, int figures) {
    Reasons {
        nearest = List.copyOf(nearest);
    }

    static Reasons unasked(Brief brief) {
        return new Reasons(brief, Inquiry.UNASKED, new Clashes(List.of(), false), false, List.of(), 0);
    }

    Reasons at(Inquiry next) {
        return new Reasons(brief, next, clashes, listed, nearest, figures);
    }

    Reasons with(Clashes known) {
        return new Reasons(brief, stage, known, listed, nearest, figures);
    }

    Reasons listed(int all) {
        return new Reasons(brief, stage, clashes, true, nearest, all);
    }

    Reasons with(Nearest found) {
        List<Nearest> more = new java.util.ArrayList<>(nearest);
        more.add(found);
        return new Reasons(brief, stage, clashes, listed, more, figures);
    }
}
