// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import drumfall.solver.teeth.flank.ToothLimitException;

/**
 * Two involute gears in mesh at module 1, with the centre distance their shifts call for.
 *
 * <p>{@code inv a_w = 2 tan a (x1 + x2) / (z1 + z2) + inv a}; {@code a_w = (z1 + z2) cos a / (2 cos a_w)}. Without
 * explicit addenda both tips are shortened to keep the standard clearance, {@code h_a1 = 1 + y - x2} (ISO 21771, from
 * memory; the worked example of KHK, <i>Gear Technical Reference</i>, "Calculation of Positive Shifted Gear").
 *
 * @param driver the driving gear
 * @param follower the driven gear, of the same rack
 */
public record InvolutePair(InvoluteGear driver, InvoluteGear follower) {
    /**
     * Checks that both gears come from racks of one pressure angle.
     *
     * @throws IllegalArgumentException if the pressure angles differ
     */
    public InvolutePair {
        if (driver.rack().pressureAngle() != follower.rack().pressureAngle()) {
            throw new IllegalArgumentException(
                    "The pressureAngle (" + follower.rack().pressureAngle() + ") of the follower must be the driver's, "
                            + driver.rack().pressureAngle() + " rad. Maybe generate both from one rack.");
        }
    }

    /**
     * A pair with standard tip shortening.
     *
     * @param rack the generating rack
     * @param driverCount teeth of the driver
     * @param followerCount teeth of the follower
     * @param driverShift profile shift of the driver, modules
     * @param followerShift profile shift of the follower, modules
     * @throws ToothLimitException if the shifts are impossible or a tip is pointed
     */
    public static InvolutePair of(
            BasicRack rack, int driverCount, int followerCount, double driverShift, double followerShift) {
        int sum = driverCount + followerCount;
        double shortened = centreDistance(rack, sum, driverShift + followerShift) - sum / 2.0;
        return ofAddenda(
                rack,
                driverCount,
                followerCount,
                driverShift,
                followerShift,
                rack.addendum() + shortened - followerShift,
                rack.addendum() + shortened - driverShift);
    }

    /**
     * A pair with chosen addenda.
     *
     * @param rack the generating rack
     * @param driverCount teeth of the driver
     * @param followerCount teeth of the follower
     * @param driverShift profile shift of the driver, modules
     * @param followerShift profile shift of the follower, modules
     * @param driverAddendum height of the driver's tip above its pitch circle, modules
     * @param followerAddendum height of the follower's tip above its pitch circle, modules
     * @throws ToothLimitException if the shifts are impossible or a tip is pointed
     */
    public static InvolutePair ofAddenda(
            BasicRack rack,
            int driverCount,
            int followerCount,
            double driverShift,
            double followerShift,
            double driverAddendum,
            double followerAddendum) {
        centreDistance(rack, driverCount + followerCount, driverShift + followerShift);
        return new InvolutePair(
                new InvoluteGear(rack, driverCount, driverShift, driverCount / 2.0 + driverAddendum),
                new InvoluteGear(rack, followerCount, followerShift, followerCount / 2.0 + followerAddendum));
    }

    /** The working pressure angle, rad. */
    public double workingAngle() {
        return workingAngle(driver.rack(), countSum(), driver.shift() + follower.shift());
    }

    /** The centre distance without backlash, modules. */
    public double centreDistance() {
        return centreDistance(driver.rack(), countSum(), driver.shift() + follower.shift());
    }

    /** The sum of shifts for a centre distance in modules; the inverse of {@link #centreDistance()}. */
    public static double shiftSum(BasicRack rack, int driverCount, int followerCount, double centreDistance) {
        int sum = driverCount + followerCount;
        double a = rack.pressureAngle();
        double least = sum / 2.0 * Math.cos(a);
        if (!(centreDistance > least)) {
            throw ToothLimitException.below("centreDistance of an involute pair", centreDistance, least, "modules");
        }
        double working = Math.acos(least / centreDistance);
        return sum * (Involute.of(working) - Involute.of(a)) / (2 * Math.tan(a));
    }

    /** The contact ratio at the nominal centre distance. */
    public double contactRatio() {
        return contactRatio(centreDistance());
    }

    /**
     * The contact ratio, both ends clipped to interference points and form radii.
     *
     * @param centreDistance modules, above the sum of the base radii
     */
    public double contactRatio(double centreDistance) {
        return Math.max(0, approachRatio(centreDistance) + recessRatio(centreDistance));
    }

    /**
     * The part of the contact ratio before the pitch point, the driver driving.
     *
     * @param centreDistance modules
     */
    public double approachRatio(double centreDistance) {
        double reach = Math.min(
                along(follower, follower.tipRadius()),
                tangentLength(centreDistance) - along(driver, driver.formRadius()));
        return (reach - pitchPoint(follower, centreDistance)) / basePitch();
    }

    /**
     * The part of the contact ratio after the pitch point, the driver driving.
     *
     * @param centreDistance modules
     */
    public double recessRatio(double centreDistance) {
        double reach = Math.min(
                along(driver, driver.tipRadius()),
                tangentLength(centreDistance) - along(follower, follower.formRadius()));
        return (reach - pitchPoint(driver, centreDistance)) / basePitch();
    }

    /**
     * The least efficiency over the path of contact at a centre distance.
     *
     * <p>Friction's lever grows with the distance from the pitch point, so the least stands at an end of the path: {@code
     * (r_b2 -+ mu s_2) / (r_b1 -+ mu s_1) * r_b1 / r_b2}, {@code s} the distances from the base tangent points, minus
     * before the pitch point and plus after it.
     *
     * @param friction coefficient of friction, &ge; 0
     * @param centreDistance modules, above the sum of the base radii
     */
    public double worstEfficiency(double friction, double centreDistance) {
        double approach = Math.max(0, approachRatio(centreDistance)) * basePitch();
        double recess = Math.max(0, recessRatio(centreDistance)) * basePitch();
        double toFollower = pitchPoint(follower, centreDistance);
        double toDriver = pitchPoint(driver, centreDistance);
        double start = efficiency(-friction, toDriver - approach, toFollower + approach);
        double end = efficiency(friction, toDriver + recess, toFollower - recess);
        return Math.min(start, end);
    }

    private double efficiency(double drag, double fromDriver, double fromFollower) {
        double rb1 = driver.baseRadius();
        double rb2 = follower.baseRadius();
        return (rb2 + drag * fromFollower) / (rb1 + drag * fromDriver) * rb1 / rb2;
    }

    /**
     * The follower's tip radius that gives a part of the contact ratio before the pitch point, modules.
     *
     * @param approachRatio the part wanted, held at 0 where it is negative
     * @param centreDistance modules
     */
    public double followerTipFor(double approachRatio, double centreDistance) {
        double along = pitchPoint(follower, centreDistance) + Math.max(0, approachRatio) * basePitch();
        return Math.hypot(follower.baseRadius(), along);
    }

    /**
     * Whether both tips stay on the other's usable flank at a centre distance.
     *
     * @param centreDistance modules
     */
    public boolean isFreeOfInterference(double centreDistance) {
        double length = tangentLength(centreDistance);
        return along(driver, driver.tipRadius()) <= length - along(follower, follower.formRadius())
                && along(follower, follower.tipRadius()) <= length - along(driver, driver.formRadius());
    }

    /** The pair as any two flanks in mesh, the driver driving. */
    public MeshPair mesh() {
        return new MeshPair(driver, follower, centreDistance());
    }

    private int countSum() {
        return driver.toothCount() + follower.toothCount();
    }

    private double basePitch() {
        return Math.PI * Math.cos(driver.rack().pressureAngle());
    }

    private double tangentLength(double centreDistance) {
        double bases = driver.baseRadius() + follower.baseRadius();
        return Math.sqrt((centreDistance - bases) * (centreDistance + bases));
    }

    private double pitchPoint(InvoluteGear gear, double centreDistance) {
        return tangentLength(centreDistance) * gear.toothCount() / countSum();
    }

    private static double along(InvoluteGear gear, double radius) {
        double base = gear.baseRadius();
        return Math.sqrt(Math.max(0, (radius - base) * (radius + base)));
    }

    private static double workingAngle(BasicRack rack, int countSum, double shiftSum) {
        double a = rack.pressureAngle();
        double value = 2 * Math.tan(a) * shiftSum / countSum + Involute.of(a);
        if (!(value > 0)) {
            double least = -Involute.of(a) * countSum / (2 * Math.tan(a));
            throw ToothLimitException.below("sum of shifts of an involute pair", shiftSum, least, "modules");
        }
        return Involute.inverse(value);
    }

    private static double centreDistance(BasicRack rack, int countSum, double shiftSum) {
        return countSum / 2.0 * Math.cos(rack.pressureAngle()) / Math.cos(workingAngle(rack, countSum, shiftSum));
    }
}
