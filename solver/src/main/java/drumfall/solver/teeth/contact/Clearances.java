// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

/**
 * What is left between parts that must not touch, in modules; negative where they interfere.
 *
 * @param driverTip between the driver's top land and the follower's root circle; for a lantern the radius left for
 *     its arbor
 * @param followerTip between the follower's top land and the driver's root circle
 * @param leastBacklash least play of the follower along its pitch circle, the trailing flanks' clearance
 * @param greatestBacklash greatest play along the follower's pitch circle
 * @param rootTouched whether a driving contact falls on a root curve, where no flank was meant
 */
public record Clearances(
        double driverTip, double followerTip, double leastBacklash, double greatestBacklash, boolean rootTouched) {
    /** Whether the pair turns without interference. */
    public boolean isFree() {
        return driverTip > 0 && followerTip > 0 && leastBacklash >= 0 && !rootTouched;
    }
}
