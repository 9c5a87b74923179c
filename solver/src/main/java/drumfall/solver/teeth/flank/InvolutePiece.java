// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.flank;

/**
 * An involute of the base circle.
 *
 * <p>{@code h(r) = h_b - inv(acos(r_b / r))}, with {@code inv(a) = tan a - a}; the profile angle is {@code acos(r_b /
 * r)}. ISO 21771, from memory.
 *
 * @param baseRadius radius of the base circle, modules, &gt; 0
 * @param baseAngle half-angle of the tooth on the base circle, rad
 * @param startRadius inner radius, modules, not below the base circle
 * @param endRadius outer radius, modules
 */
public record InvolutePiece(double baseRadius, double baseAngle, double startRadius, double endRadius)
        implements FlankPiece {
    @Override
    public FlankPoint at(double share) {
        double from = roll(startRadius);
        double roll = from + share * (roll(endRadius) - from);
        double stretch = Math.sqrt(1 + roll * roll);
        return new FlankPoint(baseRadius * stretch, baseAngle - (roll - Math.atan(roll)), roll / stretch);
    }

    @Override
    public double halfAngle(double radius) {
        double roll = roll(radius);
        return baseAngle - (roll - Math.atan(roll));
    }

    @Override
    public double radialNormal(double radius) {
        return baseRadius * roll(radius) / radius;
    }

    private double roll(double radius) {
        return Math.sqrt(Math.max(0, (radius - baseRadius) * (radius + baseRadius))) / baseRadius;
    }
}
