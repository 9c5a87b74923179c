// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.flank;

/**
 * The root curve that the rounded tip of a generating rack leaves.
 *
 * <p>The rounding's centre {@code C} lies {@code d} below the rolling line; the cut point stands beyond it on the line
 * from the pitch point through {@code C}, by the rounding's radius. The parameter {@code v} is the distance of {@code
 * C} from the line of centres: 0 at the root circle.
 *
 * @param pitchRadius radius of the rolling circle, modules
 * @param depth {@code d}, modules, &gt; 0
 * @param lateral distance of the rounding's centre from the rack tooth's centre line, modules, &ge; 0
 * @param rounding the rounding's radius, modules, &ge; 0
 * @param halfPitchAngle half the angle of one pitch, rad
 * @param end {@code v} at the end of the piece, modules
 */
public record TrochoidPiece(
        double pitchRadius, double depth, double lateral, double rounding, double halfPitchAngle, double end)
        implements FlankPiece {
    private static final double TOLERANCE = 1e-15;

    @Override
    public double startRadius() {
        return pitchRadius - depth - rounding;
    }

    @Override
    public double endRadius() {
        return radiusAt(end);
    }

    @Override
    public FlankPoint at(double share) {
        return atDistance(share * end);
    }

    /**
     * The point cut when the rounding's centre is a distance from the line of centres.
     *
     * @param v the distance, modules, &ge; 0
     */
    public FlankPoint atDistance(double v) {
        double length = Math.hypot(depth, v);
        double stretch = 1 + rounding / length;
        double x = pitchRadius - depth * stretch;
        double y = v * stretch;
        double radius = Math.hypot(x, y);
        double angle = halfPitchAngle - Math.atan2(y, x) + (v - lateral) / pitchRadius;
        return new FlankPoint(radius, angle, (depth * x - v * y) / (length * radius));
    }

    @Override
    public double halfAngle(double radius) {
        return atDistance(distanceAt(radius)).halfAngle();
    }

    @Override
    public double radialNormal(double radius) {
        return atDistance(distanceAt(radius)).radialNormal();
    }

    private double distanceAt(double radius) {
        if (radius <= startRadius()) {
            return 0;
        }
        return radius >= endRadius() ? end : Roots.find(v -> radiusAt(v) - radius, 0, end, TOLERANCE);
    }

    private double radiusAt(double v) {
        double stretch = 1 + rounding / Math.hypot(depth, v);
        return Math.hypot(pitchRadius - depth * stretch, v * stretch);
    }
}
