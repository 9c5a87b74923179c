// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.flank;

import java.util.List;

/**
 * A whole flank: smooth pieces from the root circle to the tip circle.
 *
 * @param pieces the pieces, root first, each starting at the radius where the one before it ended
 */
public record Flank(List<FlankPiece> pieces) {
    private static final double JOIN = 1e-7;

    /**
     * Checks that the pieces join.
     *
     * @throws IllegalArgumentException if there is no piece, or two pieces do not meet within 1e-7 modules
     */
    public Flank {
        pieces = List.copyOf(pieces);
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("The pieces (none) of a flank must be at least one. Maybe add one.");
        }
        for (int i = 1; i < pieces.size(); i++) {
            double gap = pieces.get(i).startRadius() - pieces.get(i - 1).endRadius();
            if (!(Math.abs(gap) < JOIN)) {
                throw new IllegalArgumentException("The gap (" + gap + ") before piece " + i
                        + " of a flank must be below " + JOIN + " modules. Maybe check where the curves cross.");
            }
        }
    }

    /** A flank of the given pieces, root first. */
    public static Flank of(FlankPiece... pieces) {
        return new Flank(List.of(pieces));
    }

    /** The radius of the root circle, modules. */
    public double rootRadius() {
        return pieces.get(0).startRadius();
    }

    /** The radius of the tip circle, modules. */
    public double tipRadius() {
        return pieces.get(pieces.size() - 1).endRadius();
    }

    /** The half-angle of the tooth where the flank leaves the root circle, rad. */
    public double rootHalfAngle() {
        return pieces.get(0).at(0).halfAngle();
    }

    /** The half-angle of the tooth at the tip circle, rad; 0 for a pointed or rounded tip. */
    public double tipHalfAngle() {
        return pieces.get(pieces.size() - 1).at(1).halfAngle();
    }

    /**
     * The number of the piece at a radius, counted from the root.
     *
     * @param radius modules; below the root the first piece answers, above the tip the last
     */
    public int pieceIndexAt(double radius) {
        int last = pieces.size() - 1;
        for (int i = 0; i < last; i++) {
            if (radius < pieces.get(i).endRadius()) {
                return i;
            }
        }
        return last;
    }

    /**
     * The half-angle of the tooth at a radius, rad.
     *
     * @param radius between root and tip, modules
     */
    public double halfAngle(double radius) {
        return pieces.get(pieceIndexAt(radius)).halfAngle(radius);
    }

    /**
     * The tooth's thickness along the chord at a radius, modules.
     *
     * @param radius between root and tip, modules
     */
    public double chordalThickness(double radius) {
        return 2 * radius * Math.sin(halfAngle(radius));
    }
}
