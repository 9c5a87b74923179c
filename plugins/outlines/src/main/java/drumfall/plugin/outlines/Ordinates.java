// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import java.util.ArrayList;
import java.util.List;

/**
 * Places for the figures of dimensions from one origin, so that none covers another: as near to what they measure as they
 * can be, in the sense of least squares (the pool-adjacent-violators rule of isotonic regression).
 */
final class Ordinates {
    private Ordinates() {}

    /** Figures that had to be pushed apart together: how many, and the mean of where their first one would stand. */
    private record Pool(int count, double mean) {
        Pool with(Pool next) {
            int all = count + next.count;
            return new Pool(all, (count * mean + next.count * next.mean) / all);
        }
    }

    /**
     * The places.
     *
     * @param values what is measured, rising
     * @param apart least distance between two figures
     */
    static List<Double> spread(List<Double> values, double apart) {
        List<Pool> pools = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            Pool pool = new Pool(1, values.get(i) - i * apart);
            while (!pools.isEmpty() && pools.get(pools.size() - 1).mean() > pool.mean()) {
                pool = pools.remove(pools.size() - 1).with(pool);
            }
            pools.add(pool);
        }
        List<Double> places = new ArrayList<>();
        for (Pool pool : pools) {
            for (int i = 0; i < pool.count(); i++) {
                places.add(pool.mean() + places.size() * apart);
            }
        }
        return places;
    }
}
