// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;

/** Finds the pattern worth most at given whole prices: a bounded knapsack, by counted branch and bound. */
final class BestPattern {
    /** Branches that are looked at before giving up; a few hundred are usual. */
    private static final int MOST_BRANCHES = 2_000_000;

    private final PieceSizes sizes;
    private final long[] prices;
    private final int[] order;
    private final int[] current;
    private int[] best;
    private long bestWorth = -1;
    private int branches;

    private BestPattern(PieceSizes sizes, long[] prices) {
        this.sizes = sizes;
        this.prices = prices;
        current = new int[prices.length];
        best = new int[prices.length];
        order = IntStream.range(0, prices.length)
                .filter(kind -> prices[kind] > 0)
                .boxed()
                .sorted(Comparator.comparingDouble(
                        kind -> -(double) prices[kind] / sizes.sizes().get(kind)))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /**
     * The best pattern; empty if the count ran out.
     *
     * @param prices for each kind, 0 to 10⁹
     */
    static Optional<int[]> of(PieceSizes sizes, long[] prices) {
        BestPattern search = new BestPattern(sizes, prices);
        search.fill(0, sizes.capacity(), 0);
        return search.branches > MOST_BRANCHES ? Optional.empty() : Optional.of(search.best);
    }

    /** What a pattern is worth. */
    static long worth(int[] pattern, long[] prices) {
        long sum = 0;
        for (int kind = 0; kind < pattern.length; kind++) {
            sum += pattern[kind] * prices[kind];
        }
        return sum;
    }

    private void fill(int place, long room, long worth) {
        if (worth > bestWorth) {
            bestWorth = worth;
            best = current.clone();
        }
        if (place == order.length || ++branches > MOST_BRANCHES || hopeless(place, room, worth)) {
            return;
        }
        int kind = order[place];
        long size = sizes.sizes().get(kind);
        for (int count = (int) Math.min(sizes.mostOnRod(kind), room / size); count >= 0; count--) {
            current[kind] = count;
            fill(place + 1, room - count * size, worth + count * prices[kind]);
        }
        current[kind] = 0;
    }

    /** Even cut to shreds, the dearest kind left could not fill the room with enough worth; one unit guards rounding. */
    private boolean hopeless(int place, long room, long worth) {
        int kind = order[place];
        return worth + (double) room * prices[kind] / sizes.sizes().get(kind) + 1 <= bestWorth;
    }
}
