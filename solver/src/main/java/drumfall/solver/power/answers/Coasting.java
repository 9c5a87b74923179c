// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.answers;

import drumfall.solver.power.books.LoadedClock;

/**
 * A pendulum left to itself while the weight is wound, the train pushing nothing: its arc fades as {@code e^(-π n / 2 Q)}
 * and goes on unlocking the escapement down to the escape angle.
 *
 * @param quality {@code Q}, positive
 * @param semiArc {@code A} when winding begins, rad
 * @param escapeAngle {@code e}, rad, positive
 * @param secondsPerBeat s
 */
public record Coasting(double quality, double semiArc, double escapeAngle, double secondsPerBeat) {
    /**
     * The coasting of a clock.
     *
     * @param clock the clock
     * @param semiArc when winding begins, rad
     */
    public static Coasting of(LoadedClock clock, double semiArc) {
        return new Coasting(
                clock.movement().pendulum().quality(),
                semiArc,
                clock.movement().escapement().escapeAngle(),
                clock.train().secondsPerBeat());
    }

    /** Beats until the escapement no longer lets a tooth go, {@code (2 Q / π) ln(A / e)}; 0 if the arc is no more than it. */
    public double beats() {
        return Math.max(0, 2 * quality / Math.PI * Math.log(semiArc / escapeAngle));
    }

    /** The same as a time, s. */
    public double seconds() {
        return beats() * secondsPerBeat;
    }
}
