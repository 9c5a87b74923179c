// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.size;

/** Left and right as seen from the dial. */
public enum Side {
    /** Left of the dial, seen from before it. */
    LEFT(-1),
    /** Right of the dial, seen from before it. */
    RIGHT(1);

    private final int sign;

    Side(int sign) {
        this.sign = sign;
    }

    /** The sign of x on this side. */
    public int sign() {
        return sign;
    }

    /** The other side. */
    public Side mirrored() {
        return this == LEFT ? RIGHT : LEFT;
    }

    /**
     * The side on which the line leaves the drum so that the centre arbor turns clockwise seen from the dial: each mesh
     * reverses the turn, so right for an even number of meshes and left for an odd one.
     *
     * @param meshesToCentre meshes from the drum to the centre arbor, not negative
     */
    public static Side ofLine(int meshesToCentre) {
        return meshesToCentre % 2 == 0 ? RIGHT : LEFT;
    }
}
