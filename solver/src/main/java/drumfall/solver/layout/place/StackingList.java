// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Planes;
import drumfall.solver.layout.Rule;
import drumfall.solver.layout.Shortfall;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.size.MeshSpacing;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/** The orders of the planes that fit the depth, less most of those that a shallower one serves for; shallowest first. */
final class StackingList {
    /** How many orders are asked whether they serve for another; more would take longer than they save. */
    private static final int STAND_INS = 500;

    private final LayoutNeed need;
    private final Slots slots;
    private final PairClaims claims;
    private final Packing packing;
    private final Map<BitSet, Stacking> byMeetings = new LinkedHashMap<>();
    private final BooleanSupplier cancelled;
    private boolean stopped;
    private long leastDepth = Long.MAX_VALUE;
    private long leastSoundDepth = Long.MAX_VALUE;

    StackingList(LayoutNeed need, Slots slots, PairClaims claims, BooleanSupplier cancelled) {
        this.cancelled = cancelled;
        this.need = need;
        this.slots = slots;
        this.claims = claims;
        this.packing = new Packing(need);
    }

    List<Stacking> build() {
        packing.each(this::add, this::isStopped);
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
        return kept;
    }

    /** Whether the work was cancelled, so that the list is not whole. */
    boolean isStopped() {
        stopped = stopped || cancelled.getAsBoolean();
        return stopped;
    }

    /** Why the list is empty: the depth, which the thickest part needs most of, or neighbours that cannot be clear. */
    Shortfall reason() {
        long needed = leastSoundDepth < Long.MAX_VALUE ? leastSoundDepth : leastDepth;
        if (needed > need.envelope().depth()) {
            return Shortfall.of(Rule.DEPTH, thickest(), need.envelope().depth(), needed);
        }
        return claims.forbiddenShortfall();
    }

    private Part thickest() {
        Part part = new Part(PartKind.DRUM, 0);
        long most = need.parts().drum().length();
        for (int mesh = 0; mesh < need.parts().meshes().size(); mesh++) {
            MeshSpacing spacing = need.parts().meshes().get(mesh);
            if (spacing.planeThickness() > most) {
                most = spacing.planeThickness();
                part = spacing.pinionLength() == most
                        ? new Part(PartKind.PINION, mesh + 1)
                        : new Part(PartKind.WHEEL, mesh);
            }
        }
        return need.parts().escape().thickness() > most
                ? new Part(PartKind.ESCAPE_WHEEL, need.parts().escapeArbor())
                : part;
    }

    private void add(Planes planes) {
        leastDepth = Math.min(leastDepth, planes.depth());
        boolean fits = planes.depth() <= need.envelope().depth();
        if (!fits && planes.depth() >= leastSoundDepth) {
            return;
        }
        Stacking stacking = new Stacking(planes, meetings(planes));
        if (claims.forbids(stacking.meets())) {
            return;
        }
        leastSoundDepth = Math.min(leastSoundDepth, planes.depth());
        if (fits) {
            byMeetings.merge(stacking.meets(), stacking, StackingList::shallower);
        }
    }

    private static Stacking shallower(Stacking first, Stacking second) {
        return second.planes().depth() < first.planes().depth() ? second : first;
    }

    private BitSet meetings(Planes planes) {
        Span[] spans = slots.spans(planes);
        BitSet meets = new BitSet(slots.pairCount());
        for (int pair : claims.open()) {
            Span first = spans[pair / slots.count()];
            Span second = spans[pair % slots.count()];
            if (first.gapTo(second) < need.gaps().spacing()) {
                meets.set(pair);
            }
        }
        return meets;
    }
}
