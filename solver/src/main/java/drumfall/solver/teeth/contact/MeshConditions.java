// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

/**
 * How a mesh departs from its drawing, in modules.
 *
 * @param centreError real minus nominal centre distance
 * @param driverThinning thinning of each driver tooth along its pitch circle, both flanks together
 * @param followerThinning thinning of each follower tooth along its pitch circle, both flanks together
 */
public record MeshConditions(double centreError, double driverThinning, double followerThinning) {
    /** As drawn. */
    public static final MeshConditions NOMINAL = new MeshConditions(0, 0, 0);

    /**
     * Checks that the figures are numbers.
     *
     * @throws IllegalArgumentException if one is not finite
     */
    public MeshConditions {
        if (!Double.isFinite(centreError + driverThinning + followerThinning)) {
            throw new IllegalArgumentException("The conditions (" + centreError + ", " + driverThinning + ", "
                    + followerThinning + ") of a mesh must be finite. Maybe check the module they were divided by.");
        }
    }

    /** Only the centre distance is off, by an error in modules. */
    public static MeshConditions centreOff(double centreError) {
        return new MeshConditions(centreError, 0, 0);
    }
}
