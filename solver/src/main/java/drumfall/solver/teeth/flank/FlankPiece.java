// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.flank;

/**
 * One smooth stretch of a flank, the radius never falling from its start to its end.
 *
 * <p>The same curve is told twice: by its own parameter, as a driver is searched, and by radius, as a follower is asked.
 */
public sealed interface FlankPiece permits ArcPiece, EpicycloidPiece, InvolutePiece, RadialPiece, TrochoidPiece {
    /** The radius at which the piece starts, modules. */
    double startRadius();

    /** The radius at which the piece ends, modules, not below the start. */
    double endRadius();

    /**
     * The point at a share of the piece.
     *
     * @param share 0 at the start to 1 at the end
     */
    FlankPoint at(double share);

    /**
     * The half-angle of the tooth at a radius, rad.
     *
     * @param radius between start and end, modules
     */
    double halfAngle(double radius);

    /**
     * The share of the outward unit normal along the radius, -1 to 1.
     *
     * @param radius between start and end, modules
     */
    double radialNormal(double radius);
}
