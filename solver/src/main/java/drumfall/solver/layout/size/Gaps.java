// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.size;

/**
 * The room that parts must leave each other.
 *
 * @param radial least gap in the elevation between parts whose planes meet, nm, not negative
 * @param axial least gap along the arbors, to each other and to the plates, nm, not negative
 * @param endShake how far an arbor may move along itself, nm, not negative
 */
public record Gaps(long radial, long axial, long endShake) {
    /**
     * Checks the three lengths.
     *
     * @throws IllegalArgumentException if a length is negative or above a metre
     */
    public Gaps {
        Nanometres.notNegative("radial gap", radial);
        Nanometres.notNegative("axial gap", axial);
        Nanometres.notNegative("end shake", endShake);
    }

    /** The distance along the arbors at which parts on two arbors never meet, nm: one may lie back, the other forward. */
    public long spacing() {
        return axial + endShake;
    }
}
