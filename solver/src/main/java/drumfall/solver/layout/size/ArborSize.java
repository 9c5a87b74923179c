// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.size;

/**
 * The rod of an arbor and the hub between its pinion and its wheel.
 *
 * @param rodRadius radius of the rod with the spacers around it, which crosses every plane between the plates, nm, positive
 * @param hubRadius radius of the hub from the plane of the pinion to that of the wheel, nm, not negative
 * @param reachesFront whether the rod goes on through the planes of the motion work: a winding square, a seconds hand;
 *     the centre arbor always does
 */
public record ArborSize(long rodRadius, long hubRadius, boolean reachesFront) {
    /**
     * Checks the two radii.
     *
     * @throws IllegalArgumentException if a length is out of range
     */
    public ArborSize {
        Nanometres.positive("rod radius", rodRadius);
        Nanometres.notNegative("hub radius", hubRadius);
    }
}
