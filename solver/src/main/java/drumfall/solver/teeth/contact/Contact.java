// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

/**
 * One pair of teeth touching, without friction yet.
 *
 * @param tooth number of the driver's tooth, counted against its turning from the one leading into the pitch
 * @param driverAngle the driver's angle, rad
 * @param followerAngle the follower's angle, rad
 * @param x distance of the contact from the driver's centre along the line of centres, modules
 * @param y distance of the contact from the line of centres, in the driver's direction of motion, modules
 * @param normalX first part of the unit normal, from driver into follower
 * @param normalY second part of it
 * @param centreDistance real distance of the centres, modules
 * @param touch which parts touch
 * @param driverPiece piece of the driver's flank, counted from the root
 * @param followerPiece piece of the follower's flank, counted from the root
 */
public record Contact(
        int tooth,
        double driverAngle,
        double followerAngle,
        double x,
        double y,
        double normalX,
        double normalY,
        double centreDistance,
        Touch touch,
        int driverPiece,
        int followerPiece) {

    /** The lever of the normal force about the driver's centre, modules. */
    public double driverArm() {
        return x * normalY - y * normalX;
    }

    /** The lever of the normal force about the follower's centre, in its direction of turning, modules. */
    public double followerArm() {
        return (centreDistance - x) * normalY + y * normalX;
    }

    /** The instantaneous ratio of speeds, follower over driver. */
    public double speedRatio() {
        return driverArm() / followerArm();
    }

    /** The distance of the contact from the follower's centre, modules. */
    public double followerRadius() {
        return Math.hypot(centreDistance - x, y);
    }

    /** The distance of the contact from the driver's centre, modules. */
    public double driverRadius() {
        return Math.hypot(x, y);
    }

    /**
     * The speed at which the driver's flank slides over the follower's, modules per radian of the driver; positive
     * after the pitch point.
     */
    public double sliding() {
        double ratio = speedRatio();
        double pitchPoint = centreDistance * ratio / (1 + ratio);
        return (1 + ratio) * ((x - pitchPoint) * normalX + y * normalY);
    }

    /** Whether the contact lies before the instantaneous pitch point, where friction pushes the centres apart. */
    public boolean isApproach() {
        return sliding() < 0;
    }

    /**
     * The ratio of torques, follower over driver, with friction.
     *
     * @param friction coefficient of friction, &ge; 0
     */
    public double torqueRatio(double friction) {
        double drag = isApproach() ? -friction : friction;
        return (followerArm() + drag * followerDragArm()) / (driverArm() + drag * driverDragArm());
    }

    /**
     * The mechanical efficiency of the instant.
     *
     * @param friction coefficient of friction, &ge; 0
     */
    public double efficiency(double friction) {
        return torqueRatio(friction) * speedRatio();
    }

    /** The coefficient of friction at which the follower's lever is used up; infinite where friction never does that. */
    public double bindingFriction() {
        double pull = (isApproach() ? -1 : 1) * followerDragArm();
        return pull < 0 ? followerArm() / -pull : Double.POSITIVE_INFINITY;
    }

    /** The same contact counted as another tooth's, both gears turned on by whole pitches. */
    Contact asTooth(int number, double driverTurn, double followerTurn) {
        return new Contact(
                number,
                driverAngle + driverTurn,
                followerAngle + followerTurn,
                x,
                y,
                normalX,
                normalY,
                centreDistance,
                touch,
                driverPiece,
                followerPiece);
    }

    /** Whether another contact belongs to the same smooth stretch of the pitch. */
    boolean continues(Contact other) {
        return tooth == other.tooth
                && touch == other.touch
                && driverPiece == other.driverPiece
                && followerPiece == other.followerPiece
                && isApproach() == other.isApproach();
    }

    // The tangent is the normal turned a quarter anticlockwise: (-normalY, normalX).
    private double driverDragArm() {
        return x * normalX + y * normalY;
    }

    private double followerDragArm() {
        return (centreDistance - x) * normalX - y * normalY;
    }
}
