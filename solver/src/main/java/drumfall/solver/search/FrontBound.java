// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

/** How many trains a front may hold, and whether one held more. May be asked by several threads. */
final class FrontBound {
    /** For fronts that only one objective or one answer keeps small. */
    static final FrontBound NONE = new FrontBound(Integer.MAX_VALUE);

    private final int most;
    private volatile boolean exceeded;

    /**
     * A bound that nothing has exceeded yet.
     *
     * @param most trains
     */
    FrontBound(int most) {
        this.most = most;
    }

    /**
     * Whether a front has been too large, this one or an earlier one.
     *
     * @param size trains on a front
     */
    boolean exceededBy(int size) {
        // Asked millions of times by all threads: only a front that is too large may cost them a write.
        if (size > most) {
            exceeded = true;
        }
        return exceeded;
    }

    boolean exceeded() {
        return exceeded;
    }
}
