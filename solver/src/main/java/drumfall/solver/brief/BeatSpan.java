// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.power.pendulum.FiniteArc;
import drumfall.solver.power.pendulum.Pendulum;

/**
 * A span of beats an hour.
 *
 * @param fewest the fewest, positive
 * @param most the most, at least the fewest
 */
record BeatSpan(double fewest, double most) {
    private static final double BEATS_PER_PERIOD_HOUR = 7200;

    /** Roundings of the floating-point conversion, far below any range a maker writes. */
    private static final double ROUNDING = 1e-9;

    static BeatSpan of(Brief.NumberRange range) {
        return new BeatSpan(range.from().si(), range.to().si());
    }

    /**
     * The beats of simple pendulums at arcs up to the given one; a wider arc beats slower.
     *
     * @param range lengths
     * @param semiArc widest arc, rad
     */
    static BeatSpan of(Brief.LengthRange range, double semiArc) {
        return new BeatSpan(beats(range.to().si(), semiArc), beats(range.from().si(), 0));
    }

    private static double beats(double length, double semiArc) {
        double smallArcPeriod = 2 * Math.PI * Math.sqrt(length / Pendulum.STANDARD_GRAVITY);
        return BEATS_PER_PERIOD_HOUR / (smallArcPeriod * FiniteArc.periodRatio(semiArc));
    }

    boolean overlaps(BeatSpan other) {
        return fewest * (1 - ROUNDING) <= other.most && other.fewest <= most * (1 + ROUNDING);
    }

    @Override
    public String toString() {
        return "%d to %d".formatted((long) Math.floor(fewest), (long) Math.ceil(most));
    }
}
