// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

/**
 * A ratchet as it is made around its arbor, and where its click bears on it.
 *
 * <p>From the arbor outwards stand the drum's inner tube, a wall, the pins that hold the ratchet to the drum, and a wall that
 * carries the teeth. A drum too small for a chamber beside its tube is solid, and its pins stand nearer. The ratchet's boss,
 * which takes the pins, stays half an extrusion, a quarter of a wall, within the roots, so that it prints on solid ground. A tooth is a saw's: steep side along the radius, back from its tip to the next one's root. The click's
 * rounded nose rests on the root, so it pushes the steep side half its own thickness above it.
 *
 * @param size what is chosen
 * @param bore diameter of the bore, m, positive
 * @param drum diameter of the bare drum, m, positive
 * @param drumWall thickness of the drum's tube, m, positive
 * @param wall the thinnest wall that is printed, m, positive
 */
public record RatchetForm(RatchetSize size, double bore, double drum, double drumWall, double wall) {
    /** Thickness of the click's nose in walls; common practice, no source. */
    private static final double NOSE_WALLS = 2;

    /** From the pins to the roots, in walls: one around the pins, and the quarter that the boss stays within. */
    private static final double BOSS_WALLS = 1.25;

    /** Thickness of the click's eye beside its pivot, in walls; common practice, no source. */
    private static final double EYE_WALLS = 2;

    /** Sizes of a drum are told in different ways, m; far above their rounding and far below what is printed. */
    private static final double ROUNDING = 1e-9;

    /** Whether the drum has a chamber that takes pins with walls beside them. */
    public boolean hollow() {
        return drum / 2 - 2 * drumWall - bore / 2 >= size.pin() + 2 * wall - ROUNDING;
    }

    /** Radius of the circle of pins, m. */
    public double pinRadius() {
        return bore / 2 + (hollow() ? drumWall : 0) + wall + size.pin() / 2;
    }

    /**
     * Least diameter of a drum in which pins have a wall on either side, m.
     *
     * @param bore diameter of the bore, m
     * @param wall the thinnest wall that is printed, m
     */
    public static double leastDrum(double bore, double wall) {
        return bore + 2 * (RatchetSize.CUSTOMARY.pin() + 2 * wall);
    }

    /** Radius to the teeth's roots, m: outside the pins, and so large that teeth stand two walls apart. */
    public double rootRadius() {
        return Math.max(pinRadius() + size.pin() / 2 + BOSS_WALLS * wall, wall * size.teeth() / Math.PI);
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

    /** Diameter of the click around its pivot, m. */
    public double clickBoss() {
        return size.pin() + 2 * EYE_WALLS * wall;
    }

    /**
     * Distance of the click's pivot from the drum's axis, m.
     *
     * @param gap between click and ratchet, m
     */
    public double clickPivot(double gap) {
        return tipRadius() + clickBoss() / 2 + gap;
    }

    /**
     * How far the click reaches from the drum's axis, m.
     *
     * @param gap between click and ratchet, m
     */
    public double reach(double gap) {
        return clickPivot(gap) + clickBoss() / 2;
    }
}
