// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import java.util.ArrayList;
import java.util.List;

/** First fit decreasing: the longest piece left goes on the first rod that has room for it. */
final class FirstFit {
    private FirstFit() {}

    /** Rods for a demand, which is left as it is. */
    static List<int[]> rods(PieceSizes sizes, int[] demand) {
        List<int[]> rods = new ArrayList<>();
        List<Long> rooms = new ArrayList<>();
        for (int kind = 0; kind < demand.length; kind++) {
            int left = demand[kind];
            long size = sizes.sizes().get(kind);
            for (int rod = 0; left > 0; rod++) {
                if (rod == rods.size()) {
                    rods.add(new int[demand.length]);
                    rooms.add(sizes.capacity());
                }
                int fits = (int) Math.min(left, rooms.get(rod) / size);
                rods.get(rod)[kind] += fits;
                rooms.set(rod, rooms.get(rod) - fits * size);
                left -= fits;
            }
        }
        return rods;
    }
}
