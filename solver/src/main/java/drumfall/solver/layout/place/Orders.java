// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import java.util.List;

/** The orders of the planes that a search carries along as sets of bits; not to be changed, and so shared. */
final class Orders {
    private final List<Stacking> stackings;
    private final long[] all;
    private final long[][] meeting;
    private final long leastDepth;
    private final long leastSoundDepth;

    /**
     * Orders that will do.
     *
     * @param stackings shallowest first
     * @param pairCount pairs of slots
     * @param leastDepth of all orders, deep as they may be, nm
     * @param leastSoundDepth of those in which no parts meet that cannot be clear, nm; {@link Long#MAX_VALUE} if there is
     *     none
     */
    Orders(List<Stacking> stackings, int pairCount, long leastDepth, long leastSoundDepth) {
        this.stackings = List.copyOf(stackings);
        this.leastDepth = leastDepth;
        this.leastSoundDepth = leastSoundDepth;
        int words = (stackings.size() + 63) / 64;
        this.all = new long[words];
        this.meeting = new long[pairCount][words];
        for (int order = 0; order < stackings.size(); order++) {
            int word = order >> 6;
            long bit = 1L << order;
            all[word] |= bit;
            stackings.get(order).meets().stream().forEach(pair -> meeting[pair][word] |= bit);
        }
    }

    boolean isEmpty() {
        return stackings.isEmpty();
    }

    Stacking get(int order) {
        return stackings.get(order);
    }

    /** How many numbers a set of orders takes. */
    int words() {
        return all.length;
    }

    /** The set of all orders, copied. */
    long[] all() {
        return all.clone();
    }

    /** The orders in which a pair of slots meets. */
    long[] meeting(int pair) {
        return meeting[pair];
    }

    long leastDepth() {
        return leastDepth;
    }

    long leastSoundDepth() {
        return leastSoundDepth;
    }
}
