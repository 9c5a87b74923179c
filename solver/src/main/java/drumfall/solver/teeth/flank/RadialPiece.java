// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.flank;

/**
 * A straight flank pointing at the gear's centre.
 *
 * @param startRadius inner radius, modules
 * @param endRadius outer radius, modules
 * @param angle half-angle of the tooth, rad
 */
public record RadialPiece(double startRadius, double endRadius, double angle) implements FlankPiece {
    @Override
    public FlankPoint at(double share) {
        return new FlankPoint(startRadius + share * (endRadius - startRadius), angle, 0);
    }

    @Override
    public double halfAngle(double radius) {
        return angle;
    }

    @Override
    public double radialNormal(double radius) {
        return 0;
    }
}
