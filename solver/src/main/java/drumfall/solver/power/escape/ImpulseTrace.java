// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import drumfall.solver.teeth.outline.Point;

/**
 * A tooth's tip on the drawn impulse face, followed from corner to corner.
 *
 * <p>The tip is a point and the face a plane, so the force stands upright on the face, turned by the friction angle towards
 * the sliding. The torque at the pallets over that at the wheel is the ratio of the moments of that one force. Places are
 * written from the pallet arbor, {@code x} outwards and {@code y} towards the wheel's centre, lengths in m.
 */
public final class ImpulseTrace {
    private static final int SIMPSON_STEPS = 200;

    private final Pallet pallet;
    private final Point corner;
    private final Point along;

    /**
     * The trace on one pallet.
     *
     * @param pallet the pallet
     */
    public ImpulseTrace(Pallet pallet) {
        this.pallet = pallet;
        this.corner = seen(pallet.lockingRadius(), pallet.lockingBearing());
        Point end = seen(pallet.dischargingRadius(), pallet.dischargingBearing());
        this.along = new Point(end.x() - corner.x(), end.y() - corner.y());
    }

    private static Point seen(double distance, double bearing) {
        return new Point(distance * Math.sin(bearing), distance * Math.cos(bearing));
    }

    /**
     * Pallet angle at which the tip touches the face, from the pendulum's zero line, rad.
     *
     * @param wheelTurn from the locking face, rad, from 0 to the working turn
     */
    public double palletAngle(double wheelTurn) {
        double share = shareOfFace(pallet.tipDistance(wheelTurn));
        double bearing = Math.atan2(corner.x() + share * along.x(), corner.y() + share * along.y());
        return pallet.tipBearing(wheelTurn) - bearing;
    }

    /** Where the face has a distance from the arbor: 0 at the locking, 1 at the discharging corner. */
    private double shareOfFace(double distance) {
        double a = along.x() * along.x() + along.y() * along.y();
        double b = corner.x() * along.x() + corner.y() * along.y();
        double c = pallet.lockingRadius() * pallet.lockingRadius() - distance * distance;
        double root = Math.sqrt(Math.max(0, b * b - a * c));
        return pallet.dischargingRadius() > pallet.lockingRadius() ? (root - b) / a : (-root - b) / a;
    }

    /**
     * Turn of the pallets for each turn of the wheel, {@code dθ/ds}.
     *
     * @param wheelTurn rad, from 0 to the working turn
     */
    public double turnRatio(double wheelTurn) {
        return new Touch(wheelTurn).turnRatio();
    }

    /**
     * Torque at the pallets for each unit of torque at the wheel.
     *
     * @param wheelTurn rad, from 0 to the working turn
     * @param friction coefficient, not negative
     */
    public double torqueRatio(double wheelTurn, double friction) {
        return new Touch(wheelTurn).torqueRatio(friction);
    }

    /**
     * Share of the wheel's work that the drawn face passes on.
     *
     * @param friction coefficient, not negative
     */
    public double efficiency(double friction) {
        double turn = pallet.drawing().escapement().workingTurn();
        double step = turn / SIMPSON_STEPS;
        double sum = 0;
        for (int i = 0; i <= SIMPSON_STEPS; i++) {
            double weight = i == 0 || i == SIMPSON_STEPS ? 1 : 2 + 2 * (i % 2);
            Touch touch = new Touch(i * step);
            sum += weight * touch.torqueRatio(friction) * touch.turnRatio();
        }
        return sum * step / 3 / turn;
    }

    /** One moment of the contact. */
    private final class Touch {
        private final Point tip;
        private final Point tipSpeed;
        private final Point liftSpeed;
        private final Point normal;

        Touch(double wheelTurn) {
            double angle = palletAngle(wheelTurn);
            this.tip = seen(pallet.tipDistance(wheelTurn), pallet.tipBearing(wheelTurn));
            this.tipSpeed = pallet.tipSpeed(wheelTurn);
            this.liftSpeed = new Point(tip.y(), -tip.x());
            // Bearings run from y to x, so a turn of the pallets is a turn clockwise of these axes.
            Point face = along.turned(-angle);
            double length = Math.hypot(face.x(), face.y());
            Point upright = new Point(face.y() / length, -face.x() / length);
            this.normal = dot(upright, liftSpeed) > 0 ? upright : new Point(-upright.x(), -upright.y());
        }

        double turnRatio() {
            return dot(normal, tipSpeed) / dot(normal, liftSpeed);
        }

        double torqueRatio(double friction) {
            double ratio = turnRatio();
            Point sliding = new Point(tipSpeed.x() - ratio * liftSpeed.x(), tipSpeed.y() - ratio * liftSpeed.y());
            double speed = Math.hypot(sliding.x(), sliding.y());
            Point force =
                    new Point(normal.x() + friction * sliding.x() / speed, normal.y() + friction * sliding.y() / speed);
            return dot(force, liftSpeed) / dot(force, tipSpeed);
        }
    }

    private static double dot(Point first, Point second) {
        return first.x() * second.x() + first.y() * second.y();
    }
}
