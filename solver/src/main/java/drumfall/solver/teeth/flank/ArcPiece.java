// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.flank;

/**
 * A circular arc: a rounded top or a pin when it bulges out of the material, a fillet when it is hollow.
 *
 * @param centreRadius distance of the arc's centre from the gear's centre, modules, &gt; 0
 * @param centreAngle angle of the arc's centre from the tooth's centre line, rad
 * @param arcRadius radius of the arc, modules, &ge; 0
 * @param hollow whether the material lies outside the arc's circle, as at a root fillet
 * @param startTurn angle at the arc's centre, from the outward radius through it to the start of the arc, 0 to pi
 * @param endTurn the same to the end of the arc, not above the start
 */
public record ArcPiece(
        double centreRadius, double centreAngle, double arcRadius, boolean hollow, double startTurn, double endTurn)
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
        double turn = startTurn + share * (endTurn - startTurn);
        double radius = radiusAt(turn);
        double across = Math.atan2(arcRadius * Math.sin(turn), centreRadius + arcRadius * Math.cos(turn));
        double lean = (arcRadius + centreRadius * Math.cos(turn)) / radius;
        return new FlankPoint(radius, centreAngle + sign() * across, sign() * lean);
    }

    @Override
    public double halfAngle(double radius) {
        double cosine =
                (radius * radius + centreRadius * centreRadius - arcRadius * arcRadius) / (2 * radius * centreRadius);
        return centreAngle + sign() * Math.acos(Math.min(1, Math.max(-1, cosine)));
    }

    @Override
    public double radialNormal(double radius) {
        double lean =
                ((radius - centreRadius) * (radius + centreRadius) + arcRadius * arcRadius) / (2 * radius * arcRadius);
        return sign() * Math.min(1, Math.max(-1, lean));
    }

    private double radiusAt(double turn) {
        double half = Math.cos(turn / 2);
        // (c - q)^2 + 4 c q cos^2(turn / 2): the cosine rule without its cancellation at the crown.
        double difference = centreRadius - arcRadius;
        return Math.sqrt(difference * difference + 4 * centreRadius * arcRadius * half * half);
    }

    private double sign() {
        return hollow ? -1 : 1;
    }
}
