// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Searches a plan with a given number of rods: rod by rod, each begun with the longest piece left.
 *
 * <p>Only rods with no room for another piece left are tried: a plan with fuller rods is never worse. What is left over on all
 * rods together is known from the start and cuts the search.
 */
final class RodSearch {
    /** Fillings that are looked at before giving up; a second or two. */
    private static final int MOST_FILLINGS = 2_000_000;

    private final PieceSizes sizes;
    private final int[] left;
    private final int[] rod;
    private final List<int[]> rods = new ArrayList<>();
    private long waste;
    private int fillings;

    private RodSearch(PieceSizes sizes, int[] demand, int rods) {
        this.sizes = sizes;
        left = demand.clone();
        rod = new int[demand.length];
        waste = rods * sizes.capacity() - sizes.used(demand);
    }

    /** What a search came to. */
    enum End {
        FOUND,
        IMPOSSIBLE,
        GIVEN_UP
    }

    /**
     * A search and its end.
     *
     * @param end what it came to
     * @param rods the plan, if one was found
     */
    record Finding(End end, Optional<List<int[]>> rods) {}

    static Finding of(PieceSizes sizes, int[] demand, int rods) {
        RodSearch search = new RodSearch(sizes, demand, rods);
        if (search.waste >= 0 && search.nextRod()) {
            return new Finding(End.FOUND, Optional.of(List.copyOf(search.rods)));
        }
        End end = search.fillings > MOST_FILLINGS ? End.GIVEN_UP : End.IMPOSSIBLE;
        return new Finding(end, Optional.empty());
    }

    private boolean nextRod() {
        int longest = 0;
        while (longest < left.length && left[longest] == 0) {
            longest++;
        }
        if (longest == left.length) {
            return true;
        }
        put(longest, 1);
        boolean found = fill(longest, sizes.capacity() - sizes.sizes().get(longest));
        put(longest, -1);
        return found;
    }

    private boolean fill(int kind, long room) {
        if (++fillings > MOST_FILLINGS) {
            return false;
        }
        if (kind == left.length) {
            return closed(room);
        }
        int most = (int) Math.min(left[kind], room / sizes.sizes().get(kind));
        for (int count = most; count >= 0; count--) {
            put(kind, count);
            boolean found = fill(kind + 1, room - count * sizes.sizes().get(kind));
            put(kind, -count);
            if (found || fillings > MOST_FILLINGS) {
                return found;
            }
        }
        return false;
    }

    private boolean closed(long room) {
        if (room > waste || hasRoomForMore(room)) {
            return false;
        }
        int[] kept = rod.clone();
        rods.add(kept);
        waste -= room;
        Arrays.fill(rod, 0);
        boolean found = nextRod();
        System.arraycopy(kept, 0, rod, 0, kept.length);
        waste += room;
        if (!found) {
            rods.remove(rods.size() - 1);
        }
        return found;
    }

    private boolean hasRoomForMore(long room) {
        for (int kind = 0; kind < left.length; kind++) {
            if (left[kind] > 0 && sizes.sizes().get(kind) <= room) {
                return true;
            }
        }
        return false;
    }

    private void put(int kind, int count) {
        rod[kind] += count;
        left[kind] -= count;
    }
}
