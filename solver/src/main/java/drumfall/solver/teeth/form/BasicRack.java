// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import drumfall.solver.teeth.flank.ToothLimitException;

/**
 * The rack that generates involute teeth, at module 1.
 *
 * <p>Profile A of ISO 53 (table 2, from memory): pressure angle 20 degrees, addendum 1, dedendum 1.25, root rounding
 * 0.38.
 *
 * @param pressureAngle rad, between 0.2 and 0.6
 * @param addendum height of the generated tooth above the reference line, modules, &gt; 0
 * @param dedendum depth below the reference line, modules, &gt; 0
 * @param rounding radius at the generating tooth's tip, modules, 0 to what the tip has room for
 */
public record BasicRack(double pressureAngle, double addendum, double dedendum, double rounding) {
    /** Profile A of ISO 53. */
    public static final BasicRack ISO_53_A = new BasicRack(Math.toRadians(20), 1, 1.25, 0.38);

    private static final double LEAST_ANGLE = 0.2;
    private static final double MOST_ANGLE = 0.6;

    /**
     * Checks the proportions.
     *
     * @throws ToothLimitException if the angle is outside its range or the rounding has no room at the tip
     */
    public BasicRack {
        if (!(pressureAngle >= LEAST_ANGLE)) {
            throw ToothLimitException.below("pressureAngle of the rack", pressureAngle, LEAST_ANGLE, "rad");
        }
        if (!(pressureAngle <= MOST_ANGLE)) {
            throw ToothLimitException.above("pressureAngle of the rack", pressureAngle, MOST_ANGLE, "rad");
        }
        if (!(addendum > 0)) {
            throw ToothLimitException.below("addendum of the rack", addendum, 0.1, "modules");
        }
        double room = roundingRoom(pressureAngle, dedendum);
        if (!(rounding <= room)) {
            throw ToothLimitException.above("rounding of the rack", rounding, room, "modules");
        }
        if (!(rounding >= 0)) {
            throw ToothLimitException.below("rounding of the rack", rounding, 0, "modules");
        }
    }

    /**
     * The ISO 53 proportions at another pressure angle, the rounding as large as 0.38 or the tip's room allows.
     *
     * @param degrees pressure angle, degrees
     */
    public static BasicRack atAngle(double degrees) {
        double angle = Math.toRadians(degrees);
        return new BasicRack(angle, 1, 1.25, Math.min(0.38, roundingRoom(angle, 1.25)));
    }

    /**
     * The same rack with a rounding no sharper than a radius; the dedendum grows to keep the straight flank.
     *
     * @param least smallest allowed root rounding, modules, such as half the nozzle over the module
     * @throws ToothLimitException if the rounding has no room even so
     */
    public BasicRack roundedFor(double least) {
        if (least <= rounding) {
            return this;
        }
        double deeper = straightDepth() + least * (1 - Math.sin(pressureAngle));
        return new BasicRack(pressureAngle, addendum, deeper, least);
    }

    /** The depth of the generating flank's straight part below the reference line, modules; 1 for profile A. */
    public double straightDepth() {
        return dedendum - rounding * (1 - Math.sin(pressureAngle));
    }

    /** The distance of the rounding's centre from the generating tooth's centre line, modules. */
    double roundingOffset() {
        return Math.PI / 4 - (dedendum - rounding) * Math.tan(pressureAngle) - rounding / Math.cos(pressureAngle);
    }

    private static double roundingRoom(double angle, double dedendum) {
        // The rounding's centre may reach, not cross, the generating tooth's centre line.
        return (Math.PI / 4 - dedendum * Math.tan(angle)) / (1 / Math.cos(angle) - Math.tan(angle));
    }
}
