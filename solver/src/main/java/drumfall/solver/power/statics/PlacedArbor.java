// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.statics;

import drumfall.solver.power.ArborSupports;
import java.util.ArrayList;
import java.util.List;

/**
 * An arbor whose forces have places and directions.
 *
 * <p>The same for both kinds: on a turning rod the supports are its bores in the plates, on a fixed rod the two ends of the
 * hub that turns on it. A line that walks along its drum is judged at both ends of its way; the friction is greatest at one
 * of them, since the size of a reaction is a convex function of the place.
 *
 * @param supports the two supports
 * @param wheel where and which way its mesh pushes the wheel
 * @param driven where and which way the pinion's mesh, or the line, pushes
 * @param drivenTo other end of the way along which {@code driven} acts, m; the same place for a pinion
 * @param weights of all that the supports carry, N
 * @param standing torque that is there without load besides the supports' own drag, N m
 */
public record PlacedArbor(
        ArborSupports supports,
        MeshForce wheel,
        MeshForce driven,
        double drivenTo,
        List<PointForce> weights,
        double standing) {
    private static final int HALVINGS = 200;

    /** Copies the list. */
    public PlacedArbor {
        weights = List.copyOf(weights);
    }

    /**
     * The line of a force that makes a torque.
     *
     * @param place behind the front support, m
     * @param arm about the arbor's axis, m, positive
     * @param direction of the force on this arbor, from across towards up, rad
     */
    public record MeshForce(double place, double arm, double direction) {
        PointForce of(double torque, double where) {
            return PointForce.at(where, torque / arm, direction);
        }
    }

    /**
     * Reactions of the supports.
     *
     * @param given torque the arbor is given, N m
     * @param out torque it hands on, N m
     */
    public Reactions reactions(double given, double out) {
        return reactions(given, out, driven.place());
    }

    private Reactions reactions(double given, double out, double drivenPlace) {
        List<PointForce> forces = new ArrayList<>(weights);
        forces.add(wheel.of(out, wheel.place()));
        forces.add(driven.of(given, drivenPlace));
        return Reactions.of(supports.span(), forces);
    }

    /**
     * Friction torque {@code µ (r_front |R_front| + r_rear |R_rear|)} with drag and all that stands.
     *
     * @param given torque the arbor is given, N m
     * @param out torque it hands on, N m
     * @return N m
     */
    public double taken(double given, double out) {
        double near = rubbing(reactions(given, out, driven.place()));
        return Math.max(near, rubbing(reactions(given, out, drivenTo))) + supports.drag() + standing;
    }

    private double rubbing(Reactions reactions) {
        return supports.front().slope() * reactions.frontSize()
                + supports.rear().slope() * reactions.rearSize();
    }

    /**
     * Torque it must be given to hand on a torque.
     *
     * <p>Friction grows by no more than {@code k_p = slope / arm} of what it is given. While {@code k_p < 1} what is given
     * less what is taken therefore rises throughout and meets {@code M_out} once, at most where all reactions point one way,
     * and halving that span finds it. Once {@code k_p} is 1 a growing torque is held by the friction that it causes.
     *
     * @param out N m
     * @return N m, or infinity if friction holds the arbor
     */
    public double given(double out) {
        double passed = 1 - slopeAtDriven() / driven.arm();
        if (!(passed > 0) || Double.isInfinite(out)) {
            return Double.POSITIVE_INFINITY;
        }
        double low = out;
        double high = (out + taken(0, out)) / passed;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (middle <= low || middle >= high) {
                break;
            }
            if (middle - taken(middle, out) < out) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private double slopeAtDriven() {
        return Math.max(supports.slopeAt(driven.place()), supports.slopeAt(drivenTo));
    }
}
