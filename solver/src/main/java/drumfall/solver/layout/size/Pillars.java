// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.size;

/**
 * Four pillars between the plates, one in each corner of the frame.
 *
 * @param radius nm, positive
 * @param sideInset from the frame's left or right edge to the pillar's axis, nm, at least the radius
 * @param endInset from the frame's upper or lower edge to the pillar's axis, nm, at least the radius
 */
public record Pillars(long radius, long sideInset, long endInset) {
    /**
     * Checks the lengths.
     *
     * @throws IllegalArgumentException if a length is out of range or a pillar stands out of the frame
     */
    public Pillars {
        Nanometres.positive("pillar radius", radius);
        Nanometres.positive("side inset of the pillars", sideInset);
        Nanometres.positive("end inset of the pillars", endInset);
        if (Math.min(sideInset, endInset) < radius) {
            throw new IllegalArgumentException(
                    "The pillar radius (%d nm) must be at most the insets (%d nm and %d nm). Maybe set the pillars further in."
                            .formatted(radius, sideInset, endInset));
        }
    }
}
