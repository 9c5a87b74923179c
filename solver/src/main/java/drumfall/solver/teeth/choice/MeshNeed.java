// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.choice;

import drumfall.solver.teeth.contact.ContactBand;

/**
 * What is asked of one mesh; lengths in modules.
 *
 * @param driverCount teeth or leaves of the driver, at least 5
 * @param followerCount teeth or leaves of the follower, at least 5
 * @param friction coefficient of friction for which the choice is made, 0 to 1
 * @param errors band of centre distance and thinning
 * @param contactRatio least contact ratio at the widest centres, at least 1
 * @param extrusion width of one extrusion
 * @param rounding least radius at a root
 */
public record MeshNeed(
        int driverCount,
        int followerCount,
        double friction,
        ContactBand.Errors errors,
        double contactRatio,
        double extrusion,
        double rounding) {
    private static final int FEWEST = 5;

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is out of its range
     */
    public MeshNeed {
        check("driverCount", driverCount, driverCount >= FEWEST, "at least 5");
        check("followerCount", followerCount, followerCount >= FEWEST, "at least 5");
        check("friction", friction, friction >= 0 && friction <= 1, "a coefficient between 0 and 1");
        check("contactRatio", contactRatio, contactRatio >= 1, "at least 1");
        check("extrusion", extrusion, extrusion > 0, "above 0 modules");
        check("rounding", rounding, rounding >= 0, "at least 0 modules");
    }

    private static void check(String name, double value, boolean good, String rule) {
        if (!good) {
            throw new IllegalArgumentException("The " + name + " (" + value + ") of a mesh to be chosen must be " + rule
                    + ". Maybe check its unit.");
        }
    }

    /** Whether the wheel drives, as in the going train. */
    public boolean wheelDrives() {
        return driverCount >= followerCount;
    }
}
