// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.answers;

/**
 * A weight let go above where its line would hold it still: the line must take up its fall, {@code W (1 + √(1 + 2 h / δ))}.
 *
 * @param load force that the line holds at rest, N
 * @param drop height through which the weight falls free, {@code h}, m, not negative
 * @param stretch of the line under the load at rest, {@code δ}, m, positive
 */
public record HangingShock(double load, double drop, double stretch) {
    /**
     * Stretch of a braided cord at its rated load over its length; from memory: 4 % for braided polyethylene to 15 % for
     * polyester. The least is taken, which shocks most.
     */
    public static final double STRETCH_AT_RATED_LOAD = 0.04;

    /** Height from which a weight may slip out of the hand; common practice, no source. m */
    public static final double USUAL_DROP = 0.005;

    /**
     * The shock on a line that stretches in proportion to its load.
     *
     * @param load force that the line holds at rest, N
     * @param drop m
     * @param length of line that stretches, m
     * @param ratedLoad N
     */
    public static HangingShock of(double load, double drop, double length, double ratedLoad) {
        return new HangingShock(load, drop, STRETCH_AT_RATED_LOAD * length * load / ratedLoad);
    }

    /** Greatest force in the line, N; twice the load if the weight is only let go. */
    public double force() {
        return load * (1 + Math.sqrt(1 + 2 * drop / stretch));
    }
}
