// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Locks;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.TrainRater;

/** The one demand that cannot be dropped and yet be asked for in vain: without an arc there is no weight to work out. */
public final class Arcs {
    /** The demand for the arc. */
    public static final HeldDemand HELD = new HeldDemand(Demand.ARC, Demand.ARC.pointer(), Locks.NONE);

    private Arcs() {}

    /**
     * Whether no escape wheel of a brief keeps the arc asked for.
     *
     * @param brief the brief
     */
    public static boolean noEscapeWheelKeepsTheArc(Brief brief) {
        TrainRater rater = new TrainRater(brief);
        return rater.choices().escapeTeeth().stream().noneMatch(rater.limits()::arcKept);
    }
}
