// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Part;
import drumfall.solver.layout.Rule;

/** The orders of the planes still sound at each level of the search, as sets of bits. */
final class LivePlanes {
    private final Orders orders;
    private final long[][] live;
    private final long gap;
    private final NearMiss nearMiss;

    LivePlanes(Orders orders, int levels, long gap, NearMiss nearMiss) {
        this.orders = orders;
        this.gap = gap;
        this.nearMiss = nearMiss;
        this.live = new long[levels + 1][orders.words()];
        this.live[0] = orders.all();
    }

    /** Starts the level after one that stands with what is sound there. */
    void open(int level) {
        System.arraycopy(live[level], 0, live[level + 1], 0, live[level].length);
    }

    /** The shallowest order still sound at a level. */
    Stacking shallowest(int level) {
        int word = 0;
        while (live[level][word] == 0) {
            word++;
        }
        return orders.get((word << 6) + Long.numberOfTrailingZeros(live[level][word]));
    }

    /**
     * Drops the orders in which parts that are not clear of each other meet.
     *
     * @param contacts of two arbors, furthest reach first
     * @param level the level being set
     * @return whether an order is left
     */
    boolean keep(Contact[] contacts, long across, long up, int level) {
        long far = Math.max(Math.abs(across), Math.abs(up));
        if (contacts.length == 0 || far >= contacts[0].reach()) {
            return true;
        }
        long squared = across * across + up * up;
        for (Contact contact : contacts) {
            if (contact.squaredReach() <= squared) {
                return true;
            }
            if (contact.meeting() == Slots.ALWAYS || !drop(contact.meeting(), live[level + 1])) {
                note(contact, squared, level);
                return false;
            }
        }
        return true;
    }

    private boolean drop(int pair, long[] left) {
        long[] dropped = orders.meeting(pair);
        long any = 0;
        for (int word = 0; word < left.length; word++) {
            left[word] &= ~dropped[word];
            any |= left[word];
        }
        return any != 0;
    }

    private void note(Contact contact, long squared, int level) {
        long shortOf = contact.reach() - (long) Math.floor(Math.sqrt((double) squared));
        Part second = contact.second();
        nearMiss.note(level, Rule.RADIAL_GAP, contact.first(), second, gap, gap - Math.max(1, shortOf));
    }
}
