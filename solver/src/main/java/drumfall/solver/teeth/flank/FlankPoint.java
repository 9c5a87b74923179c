// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.flank;

/**
 * A point of a flank in the gear's own frame, with the direction of the outward normal.
 *
 * @param radius distance from the gear's centre, modules
 * @param halfAngle angle from the tooth's centre line, rad
 * @param radialNormal share of the outward unit normal along the radius, -1 to 1; the sine of the profile angle
 */
public record FlankPoint(double radius, double halfAngle, double radialNormal) {
    /** The share of the outward unit normal across the radius, away from the tooth's centre line, 0 to 1. */
    public double forwardNormal() {
        return Math.sqrt(Math.max(0, (1 - radialNormal) * (1 + radialNormal)));
    }

    /** The same point with the tooth thinned, the flank turned towards the centre line by an angle in radians. */
    public FlankPoint thinned(double angle) {
        return new FlankPoint(radius, halfAngle - angle, radialNormal);
    }
}
