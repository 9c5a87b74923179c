// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

/**
 * A mesh that must run in a direction.
 *
 * @param mesh from 0 at the drum; the number of meshes stands for the motion work
 * @param direction from the wheel's arbor to the pinion's, or from the centre arbor to the minute arbor, rad
 *     anticlockwise from the right; held exactly, not to the grid
 */
public record DirectionLock(int mesh, double direction) {
    /**
     * Checks the direction.
     *
     * @throws IllegalArgumentException if the direction is not finite
     */
    public DirectionLock {
        if (!Double.isFinite(direction)) {
            throw new IllegalArgumentException(
                    "The direction (%s rad) of mesh (%d) must be a finite number. Maybe the two arbors share a place."
                            .formatted(direction, mesh));
        }
    }
}
