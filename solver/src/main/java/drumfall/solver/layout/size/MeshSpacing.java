// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.size;

/**
 * What one mesh of the going train asks of a layout.
 *
 * @param centreDistance working centre distance, nm, positive
 * @param wheelTipRadius nm, positive
 * @param pinionTipRadius to the tips of its leaves, or to the edge of its shrouds, nm, positive
 * @param wheelThickness nm, positive
 * @param pinionLength over all, shrouds included, nm, positive
 */
public record MeshSpacing(
        long centreDistance, long wheelTipRadius, long pinionTipRadius, long wheelThickness, long pinionLength) {
    /**
     * Checks the lengths, and that wheel and pinion reach into each other without reaching each other's axis.
     *
     * @throws IllegalArgumentException if a length is out of range, or the two cannot be in mesh
     */
    public MeshSpacing {
        Nanometres.positive("centre distance", centreDistance);
        Nanometres.positive("wheel tip radius", wheelTipRadius);
        Nanometres.positive("pinion tip radius", pinionTipRadius);
        Nanometres.positive("wheel thickness", wheelThickness);
        Nanometres.positive("pinion length", pinionLength);
        if (wheelTipRadius >= centreDistance || pinionTipRadius >= centreDistance) {
            throw new IllegalArgumentException(
                    "The centre distance (%d nm) must be more than the tip radii (%d nm and %d nm). Maybe a diameter was given."
                            .formatted(centreDistance, wheelTipRadius, pinionTipRadius));
        }
        if (wheelTipRadius + pinionTipRadius < centreDistance) {
            throw new IllegalArgumentException(
                    "The centre distance (%d nm) must be at most the sum of the tip radii (%d nm), or the teeth never meet. Maybe the tip radii are of another mesh."
                            .formatted(centreDistance, wheelTipRadius + pinionTipRadius));
        }
    }

    /** Thickness of the plane that wheel and pinion share, nm: the longer of the two; the shorter stands in its middle. */
    public long planeThickness() {
        return Math.max(wheelThickness, pinionLength);
    }
}
