// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.sheet.Count;

/**
 * A mesh named so that it keeps its name when the number of meshes changes.
 *
 * @param side above the centre arbor, towards the drum, or below it, towards the escape wheel
 * @param number from 1: above the centre counted from the drum, below it from the centre
 */
public record MeshPlace(Side side, @Count(from = 1, to = 4) int number) {
    /** A side of the centre arbor. */
    public enum Side {
        /** From the drum to the centre. */
        ABOVE,
        /** From the centre to the escape wheel. */
        BELOW
    }

    /**
     * The place of a mesh in a train.
     *
     * @param index number of the mesh from the drum, from 0
     * @param meshesAbove meshes above the centre
     */
    public static MeshPlace of(int index, int meshesAbove) {
        return index < meshesAbove
                ? new MeshPlace(Side.ABOVE, index + 1)
                : new MeshPlace(Side.BELOW, index - meshesAbove + 1);
    }

    @Override
    public String toString() {
        return (side == Side.ABOVE ? "above-" : "below-") + number;
    }
}
