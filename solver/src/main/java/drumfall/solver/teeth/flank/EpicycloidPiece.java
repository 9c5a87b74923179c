// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.flank;

/**
 * An epicycloid rolled on the pitch circle, or the curve at a fixed distance inside one.
 *
 * <p>With {@code R} the pitch radius, {@code q} the rolling circle's radius, {@code p} the offset, {@code tau} the
 * roller's turn from the line of centres, {@code s = sin(tau/2)}, {@code c = cos(tau/2)} and {@code w = 2 q s - p}, the
 * point is {@code (R + s w, -c w)} in the frame that turns with the line of centres; {@code r^2 = R^2 + 2 R s w + w^2}
 * is a quadratic in {@code s}, so the radius is inverted in closed form. The normal passes through the rolling contact.
 *
 * @param pitchRadius {@code R}, modules, &gt; 0
 * @param rollerRadius {@code q}, modules, &gt; 0
 * @param offset {@code p}, modules, &ge; 0; the pin's radius for a lantern wheel
 * @param cuspAngle half-angle at which the bare epicycloid leaves the pitch circle, rad
 * @param startTurn roller's turn at the start, rad, at or past the point where the offset curve turns back
 * @param endTurn roller's turn at the end, rad, at most pi
 */
public record EpicycloidPiece(
        double pitchRadius, double rollerRadius, double offset, double cuspAngle, double startTurn, double endTurn)
        implements FlankPiece {
    @Override
    public double startRadius() {
        return radiusAt(startTurn);
    }

    @Override
    public double endRadius() {
        return radiusAt(endTurn);
    }

    @Override
    public FlankPoint at(double share) {
        return atTurn(startTurn + share * (endTurn - startTurn));
    }

    /**
     * The point at a turn of the roller.
     *
     * @param turn roller's turn from the line of centres, rad
     */
    public FlankPoint atTurn(double turn) {
        double s = Math.sin(turn / 2);
        double c = Math.cos(turn / 2);
        double w = 2 * rollerRadius * s - offset;
        double x = pitchRadius + s * w;
        double y = -c * w;
        double radius = Math.hypot(x, y);
        double angle = cuspAngle - turn * rollerRadius / pitchRadius - Math.atan2(y, x);
        return new FlankPoint(radius, angle, (s * pitchRadius + w) / radius);
    }

    @Override
    public double halfAngle(double radius) {
        return atTurn(turnAt(radius)).halfAngle();
    }

    @Override
    public double radialNormal(double radius) {
        double s = halfSine(radius);
        return Math.min(1, (s * pitchRadius + 2 * rollerRadius * s - offset) / radius);
    }

    /**
     * The roller's turn at which the curve reaches a radius, rad.
     *
     * @param radius modules
     */
    public double turnAt(double radius) {
        return 2 * Math.asin(halfSine(radius));
    }

    private double halfSine(double radius) {
        double a = 4 * rollerRadius * (pitchRadius + rollerRadius);
        double b = offset * (pitchRadius + 2 * rollerRadius);
        double rest = b * b + a * ((radius - pitchRadius) * (radius + pitchRadius) - offset * offset);
        return Math.min(1, (b + Math.sqrt(Math.max(0, rest))) / a);
    }

    private double radiusAt(double turn) {
        double s = Math.sin(turn / 2);
        double w = 2 * rollerRadius * s - offset;
        return Math.sqrt(pitchRadius * pitchRadius + 2 * pitchRadius * s * w + w * w);
    }
}
