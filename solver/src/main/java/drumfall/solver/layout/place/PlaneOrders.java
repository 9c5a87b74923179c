// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * All ways to lay the gears' planes one before the other, some of them level: ordered partitions of the planes in which
 * no two consecutive meshes, which share an arbor, are level.
 */
final class PlaneOrders {
    private final int planeCount;
    private final Consumer<List<Integer>> receiver;

    private PlaneOrders(int planeCount, Consumer<List<Integer>> receiver) {
        this.planeCount = planeCount;
        this.receiver = receiver;
    }

    /** Hands over each order once, from rear to front, each level a set of bits; the list is used again afterwards. */
    static void each(int planeCount, Consumer<List<Integer>> receiver) {
        new PlaneOrders(planeCount, receiver).insert(0, new ArrayList<>());
    }

    private void insert(int plane, List<Integer> levels) {
        if (plane == planeCount) {
            receiver.accept(levels);
            return;
        }
        for (int level = 0; level < levels.size(); level++) {
            int before = levels.get(level);
            if (plane == 0 || (before & (1 << (plane - 1))) == 0) {
                levels.set(level, before | (1 << plane));
                insert(plane + 1, levels);
                levels.set(level, before);
            }
        }
        for (int level = 0; level <= levels.size(); level++) {
            levels.add(level, 1 << plane);
            insert(plane + 1, levels);
            levels.remove(level);
        }
    }
}
