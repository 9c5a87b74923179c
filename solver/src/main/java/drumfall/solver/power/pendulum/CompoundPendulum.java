// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

import java.util.ArrayList;
import java.util.List;

/**
 * A real pendulum: a bob that a nut moves, and everything that stays where it is.
 *
 * <p>Its equivalent length is {@code L = I / (m h)}, by the parallel-axis theorem (Beckett, <i>A Rudimentary Treatise on
 * Clocks, Watches and Bells</i>, 8th ed. 1903, pp. 37-38).
 *
 * @param bob the part that the rating nut moves
 * @param fixed rod, fittings, weights laid on; may be empty
 */
public record CompoundPendulum(PendulumPart bob, List<PendulumPart> fixed) {
    /**
     * Copies the list and checks that the whole hangs.
     *
     * @throws IllegalArgumentException if its centre of mass is not below the axis; the place from which the bob makes it hang is named
     */
    public CompoundPendulum {
        fixed = List.copyOf(fixed);
        double others = fixed.stream().mapToDouble(PendulumPart::moment).sum();
        double least = -others / bob.mass();
        Bounds.moreThan("centre", "the bob", bob.centre(), least, "m");
    }

    /** Whole mass, kg. */
    public double mass() {
        return bob.mass() + fixed.stream().mapToDouble(PendulumPart::mass).sum();
    }

    /** Mass times distance of its centre from the axis, {@code m h}, kg m. */
    public double massMoment() {
        return bob.moment() + fixed.stream().mapToDouble(PendulumPart::moment).sum();
    }

    /** Distance of the centre of mass from the axis, m. */
    public double centreOfMass() {
        return massMoment() / mass();
    }

    /** Moment of inertia about the axis, kg m&sup2;. */
    public double inertia() {
        return bob.inertia() + fixed.stream().mapToDouble(PendulumPart::inertia).sum();
    }

    /** Length of the simple pendulum of the same period, {@code L = I / (m h)}, m. */
    public double equivalentLength() {
        return inertia() / massMoment();
    }

    /** How much the equivalent length grows with the bob's distance, {@code ∂L/∂l = m_b (2 l - L) / (m h)}. */
    public double lengthPerBobTravel() {
        return bob.mass() * (2 * bob.centre() - equivalentLength()) / massMoment();
    }

    /**
     * The pendulum with its bob moved.
     *
     * @param down m; negative for up
     */
    public CompoundPendulum withBobLowered(double down) {
        return new CompoundPendulum(bob.lowered(down), fixed);
    }

    /**
     * The pendulum with one more part that stays where it is.
     *
     * @param part the part
     */
    public CompoundPendulum with(PendulumPart part) {
        List<PendulumPart> more = new ArrayList<>(fixed);
        more.add(part);
        return new CompoundPendulum(bob, more);
    }

    /**
     * Period of a vanishing arc, {@code 2 π √(L / g)}, s.
     *
     * @param gravity m/s&sup2;, positive
     * @throws IllegalArgumentException if gravity is not positive
     */
    public double smallArcPeriod(double gravity) {
        Bounds.moreThan("gravity", "a pendulum", gravity, 0, "m/s²");
        return 2 * Math.PI * Math.sqrt(equivalentLength() / gravity);
    }
}
