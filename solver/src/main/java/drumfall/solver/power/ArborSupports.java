// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

/**
 * The two supports of an arbor and what a load between or beyond them costs in friction torque, whatever its direction.
 *
 * <p>Moment balance shares a load at {@code x} of span {@code l} as {@code 1 - x/l} and {@code x/l}; an overhung load
 * loads one support with more than itself. Loads are added as if all reactions pointed one way, the least favourable
 * case, until the arbors are placed.
 *
 * @param front support at place 0
 * @param rear support at place {@code span}
 * @param span distance between the supports, m, positive
 */
public record ArborSupports(Support front, Support rear, double span) {
    /**
     * Friction torque for each newton of load at a place.
     *
     * @param place distance behind the front support, m; negative or beyond the span for an overhung load
     * @return m
     */
    public double slopeAt(double place) {
        double share = place / span;
        return front.slope() * Math.abs(1 - share) + rear.slope() * Math.abs(share);
    }

    /** Friction torque for each newton of load at the least favourable place between the supports, m. */
    public double worstSlopeBetween() {
        return Math.max(front.slope(), rear.slope());
    }

    /** Torque that both supports take without load, N m. */
    public double drag() {
        return front.drag() + rear.drag();
    }
}
