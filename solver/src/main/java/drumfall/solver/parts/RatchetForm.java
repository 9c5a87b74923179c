// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

/**
 * A ratchet as it is made around its arbor, and where its click bears on it.
 *
 * <p>From the arbor outwards stand the drum's inner tube, a wall, the pins that hold the ratchet to the drum, and a wall that
 * carries the teeth. A tooth is a saw's: steep side along the radius, back from its tip to the next one's root. The click's
 * rounded nose rests on the root, so it pushes the steep side half its own thickness above it.
 *
 * @param size what is chosen
 * @param bore diameter of the bore, m, positive
 * @param drumWall thickness of the drum's tube, m, positive
 * @param wall the thinnest wall that is printed, m, positive
 */
public record RatchetForm(RatchetSize size, double bore, double drumWall, double wall) {
    /** Thickness of the click's nose in walls; common practice, no source. */
    private static final double NOSE_WALLS = 2;

    /** Radius of the circle of pins, m. */
    public double pinRadius() {
        return bore / 2 + drumWall + wall + size.pin() / 2;
    }

    /** Radius to the teeth's roots, m: outside the pins, and so large that teeth stand two walls apart. */
    public double rootRadius() {
        return Math.max(pinRadius() + size.pin() / 2 + wall, wall * size.teeth() / Math.PI);
    }

    /** Radius to the tips, m. */
    public double tipRadius() {
        return rootRadius() + size.toothDepth();
    }

    /** Thickness of the click's rounded nose, m. */
    public double nose() {
        return NOSE_WALLS * wall;
    }

    /** How far above the root the click bears, m. */
    public double contactHeight() {
        return nose() / 2;
    }

    /**
     * Height above the root that bends a tooth of even thickness as much as the tapered one is bent at its worst, m.
     *
     * <p>A tooth of depth {@code h} pushed at a height {@code y} has the section {@code t (1 - x / h)} at a height {@code x};
     * the stress rises as {@code (y - x) / (1 - x / h)²}. That is greatest at the root if {@code y <= h / 2}, and else at
     * {@code x = 2 y - h}, where it is {@code h² / (4 (h - y))}. Our own derivation.
     *
     * @return infinite if the click bears at the tip or beyond, where nothing holds it
     */
    public double bendingHeight() {
        double depth = size.toothDepth();
        double height = contactHeight();
        if (height <= depth / 2) {
            return height;
        }
        return height < depth ? depth * depth / (4 * (depth - height)) : Double.POSITIVE_INFINITY;
    }

    /** From the ratchet's axis to where the click bears, m. */
    public double contactRadius() {
        return rootRadius() + contactHeight();
    }

    /** Thickness of a tooth from root to root, m. */
    public double rootThickness() {
        return 2 * rootRadius() * Math.sin(Math.PI / size.teeth());
    }
}
