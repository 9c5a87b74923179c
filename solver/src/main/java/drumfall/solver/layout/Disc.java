// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

/**
 * A round part where it stands.
 *
 * @param part what it is
 * @param place its axis in the elevation
 * @param radius to its tips, nm
 * @param span its plane
 */
public record Disc(Part part, Place place, long radius, Span span) {
    /** The smallest box around the disc. */
    public Box box() {
        return Box.around(place, radius);
    }
}
