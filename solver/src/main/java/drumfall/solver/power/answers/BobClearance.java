// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.answers;

import drumfall.solver.power.pendulum.Bounds;

/**
 * Whether a weight that falls beside, before or behind a pendulum stays clear of the swinging bob; plain geometry.
 *
 * <p>The bob and the weight are taken as boxes about the space that each sweeps: the bob from one end of its swing to the
 * other, the weight down its whole fall. Boxes stay apart if they do so along one of the three axes, and the widest of the
 * three gaps is then a distance that the bodies surely keep; where no axis parts them the bodies may meet. Lengths in m,
 * heights counted down from the pendulum's suspension.
 *
 * @param bob the bob
 * @param semiArc of the swing, {@code A}, rad, at least 0, less than a quarter turn
 * @param weight the weight
 */
public record BobClearance(Bob bob, double semiArc, Weight weight) {
    /**
     * A bob on its rod.
     *
     * @param distance of its centre from the suspension, positive
     * @param radius in the plane of the swing, positive
     * @param thickness across that plane, positive
     */
    public record Bob(double distance, double radius, double thickness) {
        /** Checks the sizes. */
        public Bob {
            Bounds.moreThan("distance", "a bob", distance, 0, "m");
            Bounds.moreThan("radius", "a bob", radius, 0, "m");
            Bounds.moreThan("thickness", "a bob", thickness, 0, "m");
        }
    }

    /**
     * A hanging weight and its way.
     *
     * @param aside of its axis from the plumb line through the suspension, in the plane of the swing
     * @param before its axis before that plane; negative behind it
     * @param radius positive
     * @param height positive
     * @param highestTop of its upper end fully wound, counted down from the suspension
     * @param fall not negative
     */
    public record Weight(double aside, double before, double radius, double height, double highestTop, double fall) {
        /** Checks the sizes. */
        public Weight {
            Bounds.finite("place aside", "the weight", aside, "m");
            Bounds.finite("place before", "the weight", before, "m");
            Bounds.moreThan("radius", "the weight", radius, 0, "m");
            Bounds.moreThan("height", "the weight", height, 0, "m");
            Bounds.finite("highestTop", "the weight", highestTop, "m");
            Bounds.atLeast("fall", "the weight", fall, 0, "m");
        }
    }

    /**
     * Checks the arc.
     *
     * @throws IllegalArgumentException if it is out of its range
     */
    public BobClearance {
        Bounds.atLeast("semiArc", "a pendulum", semiArc, 0, "rad");
        Bounds.lessThan("semiArc", "a pendulum", semiArc, Math.PI / 2, "rad");
    }

    /** Gap in the plane of the swing, m: {@code |x| - r_w - (l sin A + r_b)}. */
    public double aside() {
        return Math.abs(weight.aside()) - weight.radius() - (bob.distance() * Math.sin(semiArc) + bob.radius());
    }

    /** Gap across that plane, m. */
    public double across() {
        return Math.abs(weight.before()) - weight.radius() - bob.thickness() / 2;
    }

    /** Gap up and down, m: the weight ends its fall above the bob's highest place, or begins it below the lowest. */
    public double upright() {
        double highest = bob.distance() * Math.cos(semiArc) - bob.radius();
        double lowest = bob.distance() + bob.radius();
        double lowestOfWeight = weight.highestTop() + weight.fall() + weight.height();
        return Math.max(highest - lowestOfWeight, weight.highestTop() - lowest);
    }

    /** Distance that weight and bob surely keep, m; not positive if they may meet. */
    public double gap() {
        return Math.max(aside(), Math.max(across(), upright()));
    }

    /** How much further out the weight must hang in the plane of the swing to keep a distance, m; 0 if it keeps it. */
    public double furtherAside(double wanted) {
        return gap() >= wanted ? 0 : wanted - aside();
    }
}
