// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.statics;

import java.util.List;

/**
 * What two supports push back: moment balance about each gives {@code R_rear = -Σ F x / l} and
 * {@code R_front = -Σ F (1 - x / l)}.
 *
 * @param front at place 0
 * @param rear at the span
 */
public record Reactions(PointForce front, PointForce rear) {
    /**
     * The reactions to forces.
     *
     * @param span between the supports, m, positive
     * @param forces on the arbor
     * @throws IllegalArgumentException if the span is not positive
     */
    public static Reactions of(double span, List<PointForce> forces) {
        if (!(span > 0)) {
            throw new IllegalArgumentException("The span (%s m) of an arbor must be more than 0 m.".formatted(span));
        }
        double frontAcross = 0;
        double frontUp = 0;
        double rearAcross = 0;
        double rearUp = 0;
        for (PointForce force : forces) {
            double share = force.place() / span;
            frontAcross -= force.across() * (1 - share);
            frontUp -= force.up() * (1 - share);
            rearAcross -= force.across() * share;
            rearUp -= force.up() * share;
        }
        return new Reactions(new PointForce(0, frontAcross, frontUp), new PointForce(span, rearAcross, rearUp));
    }

    /** Size of the front reaction, N. */
    public double frontSize() {
        return Math.hypot(front.across(), front.up());
    }

    /** Size of the rear reaction, N. */
    public double rearSize() {
        return Math.hypot(rear.across(), rear.up());
    }
}
