// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.rating.CellFront;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** Lists the upper halves with a number of meshes that some front may need. */
public final class UpperHalves {
    /** One choice in so many at each place is tried first: its halves replace most others before these are worked out. */
    private static final int SAMPLE = 7;

    private final HalfTables tables;
    private final int count;
    private final List<LowerHalf> lower;
    private final CellFront found;
    private final boolean thin;
    private final BooleanSupplier cancelled;

    private UpperHalves(
            HalfTables tables,
            int count,
            List<LowerHalf> lower,
            CellFront found,
            boolean thin,
            BooleanSupplier cancelled) {
        this.tables = tables;
        this.count = count;
        this.lower = lower;
        this.found = found;
        this.thin = thin;
        this.cancelled = cancelled;
    }

    /**
     * A sample of the halves, found quickly: only one choice in a few is tried at each place.
     *
     * @param tables of the brief
     * @param count meshes from the drum to the centre, at least 1
     * @param stride one choice in so many is tried
     * @param lower the lower halves it will be joined to, at least one
     * @param found trains found; halves without prospects of changing this front are left out. It must not change while
     *     listing
     * @param cancelled asked often; once true the list ends early
     * @return those that make least of the centre's torque first
     */
    public static List<UpperHalf> sample(
            HalfTables tables,
            int count,
            int stride,
            List<LowerHalf> lower,
            CellFront found,
            BooleanSupplier cancelled) {
        return new UpperHalves(tables, count, lower, found, true, cancelled).list(stride, List.of());
    }

    /**
     * All halves that no other one replaces and that have prospects.
     *
     * @param tables of the brief
     * @param count meshes from the drum to the centre, at least 1
     * @param lower the lower halves it will be joined to, at least one
     * @param found trains found; halves without prospects of changing this front are left out. It must not change while
     *     listing
     * @param cancelled asked often; once true the list ends early
     * @return those that make least of the centre's torque first
     */
    public static List<UpperHalf> thinned(
            HalfTables tables, int count, List<LowerHalf> lower, CellFront found, BooleanSupplier cancelled) {
        UpperHalves halves = new UpperHalves(tables, count, lower, found, true, cancelled);
        return halves.list(1, count > 1 ? halves.list(SAMPLE, List.of()) : List.of());
    }

    /**
     * All halves, also those that another one replaces; for small briefs.
     *
     * @param tables of the brief
     * @param count meshes from the drum to the centre, at least 1
     * @param lower the lower halves it will be joined to, at least one
     * @param cancelled asked often; once true the list ends early
     * @return those that make least of the centre's torque first
     */
    public static List<UpperHalf> all(HalfTables tables, int count, List<LowerHalf> lower, BooleanSupplier cancelled) {
        return new UpperHalves(tables, count, lower, tables.nothing(), false, cancelled).list(1, List.of());
    }

    private List<UpperHalf> list(int stride, List<UpperHalf> known) {
        List<UpperHalf> halves = listed(new UpperPlaces(tables, count, stride, lower), known);
        int slope = UpperLines.RUNNING + 1;
        halves.sort(Comparator.<UpperHalf>comparingDouble(half -> half.lines[slope])
                .thenComparing((a, b) -> a.compareTo(b)));
        return halves;
    }

    private List<UpperHalf> listed(UpperPlaces places, List<UpperHalf> known) {
        List<UpperHalf> halves = new ArrayList<>(known);
        if (places.isEmpty() || cancelled.getAsBoolean()) {
            return new ArrayList<>();
        }
        // Each piece of work has a front of its own, whichever thread takes it: the pieces and the order in which they
        // are put together are always the same.
        UpperProspects prospects = new UpperProspects(places.rules, found, count, lower);
        IntStream.range(0, UpperListing.PARTS).boxed().toList().parallelStream()
                .map(part -> new UpperListing(places, part, thin, frontOf(places, known, prospects), cancelled).list())
                .toList()
                .forEach(halves::addAll);
        return thin ? frontOf(places, halves, prospects).culled(cancelled) : halves;
    }

    private UpperFront frontOf(UpperPlaces places, List<UpperHalf> halves, UpperProspects prospects) {
        UpperFront front =
                new UpperFront(places.rules, places.lines, prospects, places.durationAsked, places.lowerMayBreak);
        for (UpperHalf half : halves) {
            if (cancelled.getAsBoolean()) {
                break;
            }
            front.offer(half);
        }
        return front;
    }
}
