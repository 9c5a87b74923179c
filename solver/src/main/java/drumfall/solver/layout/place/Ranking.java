// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Preference;
import drumfall.solver.layout.SizeLimit;
import drumfall.solver.layout.Wish;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Compares layouts, and lower bounds of layouts, by what is preferred. */
final class Ranking {
    private final Preference preference;
    private final Optional<SizeLimit> limit;
    private long[] best;

    Ranking(Preference preference, Optional<SizeLimit> limit) {
        this.preference = preference;
        this.limit = limit;
    }

    boolean isIndifferent() {
        return preference.wishes().isEmpty();
    }

    /** Whether figures, which may be lower bounds, keep to the limit and are better than the best kept so far. */
    boolean isBetter(Figures figures) {
        if (limit.isPresent() && figures.of(limit.get().wish()) > limit.get().most()) {
            return false;
        }
        return best == null || Arrays.compare(score(figures), best) < 0;
    }

    void keep(Figures figures) {
        best = score(figures);
    }

    private long[] score(Figures figures) {
        List<Preference.WeightedWish> wishes = preference.wishes();
        if (preference.manner() == Preference.Manner.IN_ORDER) {
            return wishes.stream().mapToLong(wish -> figures.of(wish.wish())).toArray();
        }
        return new long[] {
            wishes.stream()
                    .mapToLong(wish -> wish.weight() * figures.of(wish.wish()))
                    .sum()
        };
    }

    /**
     * What the wishes are judged by, nm.
     *
     * @param spread across, from the leftmost arbor to the rightmost
     * @param width of the extent
     * @param height of the extent
     * @param imbalance of the extent about the dial's vertical
     * @param depth over plates and motion work
     */
    record Figures(long spread, long width, long height, long imbalance, long depth) {
        private long of(Wish wish) {
            return switch (wish) {
                case UPRIGHT -> spread;
                case COMPACT -> height;
                case SYMMETRIC -> imbalance;
                case SHALLOW -> depth;
                case NARROW -> width;
                case SMALL_PLATE -> Math.multiplyExact(width, height);
            };
        }
    }
}
