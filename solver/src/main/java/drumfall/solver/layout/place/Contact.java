// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Part;

/**
 * Two parts that must be a distance apart if they meet.
 *
 * @param first a part
 * @param second another
 * @param reach least distance between their axes, nm
 * @param squaredReach its square, nm&sup2;
 * @param meeting see {@link Slots#meeting}
 */
record Contact(Part first, Part second, long reach, long squaredReach, int meeting) {
    Contact(Part first, Part second, long reach, int meeting) {
        this(first, second, reach, reach * reach, meeting);
    }
}
