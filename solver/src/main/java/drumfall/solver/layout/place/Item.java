// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Part;

/**
 * A round part on its arbor.
 *
 * @param part what it is
 * @param radius nm
 * @param slot its range along the arbors, see {@link Slots}
 */
record Item(Part part, long radius, int slot) {
    boolean isBetweenPlates() {
        return slot != Slots.FIRST_MOTION && slot != Slots.SECOND_MOTION;
    }
}
