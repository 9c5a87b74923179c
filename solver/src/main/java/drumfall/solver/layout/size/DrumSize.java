// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.size;

/**
 * The drum beside the great wheel.
 *
 * @param flangeRadius of the flanges, or of the way of the click where that reaches further, nm, positive
 * @param length over the flanges, nm, positive
 * @param clickSpace room between the plane of the great wheel and the drum for click and ratchet, nm, not negative
 * @param face on which side of the great wheel the drum stands
 */
public record DrumSize(long flangeRadius, long length, long clickSpace, Face face) {
    /**
     * Checks the lengths.
     *
     * @throws IllegalArgumentException if a length is out of range
     */
    public DrumSize {
        Nanometres.positive("drum flange radius", flangeRadius);
        Nanometres.positive("drum length", length);
        Nanometres.notNegative("click space", clickSpace);
    }
}
