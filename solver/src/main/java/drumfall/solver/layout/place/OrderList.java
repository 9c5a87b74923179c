// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.Planes;
import drumfall.solver.layout.Span;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/** The orders of the planes that fit the depth, less most of those that a shallower one serves for; shallowest first. */
final class OrderList {
    /** How many orders are asked whether they serve for another; more would take longer than they save. */
    private static final int STAND_INS = 500;

    private final PlaneBook.Question asked;
    private final Slots slots;
    private final Map<BitSet, Stacking> byMeetings = new LinkedHashMap<>();
    private final BooleanSupplier cancelled;
    private boolean stopped;
    private long leastDepth = Long.MAX_VALUE;
    private long leastSoundDepth = Long.MAX_VALUE;

    OrderList(PlaneBook.Question asked, BooleanSupplier cancelled) {
        this.asked = asked;
        this.slots = new Slots(asked.sizes().gears().size() - 1);
        this.cancelled = cancelled;
    }

    Orders build() {
        new Packing(asked.sizes(), asked.face(), asked.plate(), asked.motion()).each(this::add, this::isStopped);
        List<Stacking> sorted = new ArrayList<>(byMeetings.values());
        sorted.sort(
                Comparator.<Stacking>comparingLong(stacking -> stacking.planes().depth())
                        .thenComparing(stacking -> stacking.meets().cardinality()));
        List<Stacking> kept = new ArrayList<>();
        for (Stacking stacking : sorted) {
            if (!isStopped() && kept.stream().limit(STAND_INS).noneMatch(better -> better.servesFor(stacking))) {
                kept.add(stacking);
            }
        }
        return new Orders(kept, slots.pairCount(), leastDepth, leastSoundDepth);
    }

    private boolean isStopped() {
        stopped = stopped || cancelled.getAsBoolean();
        return stopped;
    }

    private void add(Planes planes) {
        leastDepth = Math.min(leastDepth, planes.depth());
        boolean fits = planes.depth() <= asked.depth();
        if (!fits && planes.depth() >= leastSoundDepth) {
            return;
        }
        Stacking stacking = new Stacking(planes, meetings(planes));
        if (stacking.meets().intersects(asked.forbidden())) {
            return;
        }
        leastSoundDepth = Math.min(leastSoundDepth, planes.depth());
        if (fits) {
            byMeetings.merge(stacking.meets(), stacking, OrderList::shallower);
        }
    }

    private static Stacking shallower(Stacking first, Stacking second) {
        return second.planes().depth() < first.planes().depth() ? second : first;
    }

    private BitSet meetings(Planes planes) {
        Span[] spans = slots.spans(planes);
        BitSet meets = new BitSet(slots.pairCount());
        long spacing = asked.sizes().gaps().spacing();
        for (int pair = asked.open().nextSetBit(0);
                pair >= 0;
                pair = asked.open().nextSetBit(pair + 1)) {
            if (spans[pair / slots.count()].gapTo(spans[pair % slots.count()]) < spacing) {
                meets.set(pair);
            }
        }
        return meets;
    }
}
