// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.rating.CellFront;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** Lists the lower halves with a number of meshes that some front may need, least running torque first. */
public final class LowerHalves {
    private final HalfTables tables;
    private final HalfRules rules;
    private final boolean thin;
    private final int stride;
    private final List<LowerHalf> known;
    private final CellFront found;
    private final BooleanSupplier cancelled;
    private final List<List<MeshChoice>> choices = new ArrayList<>();

    private LowerHalves(
            HalfTables tables,
            int count,
            boolean thin,
            int stride,
            List<LowerHalf> known,
            CellFront found,
            BooleanSupplier cancelled) {
        this.tables = tables;
        this.rules = tables.rules;
        this.thin = thin;
        this.stride = stride;
        this.known = rules.judged(known);
        this.found = found;
        this.cancelled = cancelled;
        for (int number = 1; number <= count; number++) {
            choices.add(everyFew(tables.choicesAt(MeshPlace.Side.BELOW, number), stride));
        }
    }

    /**
     * A sample of the halves, found quickly: only one choice in a few is tried at each place.
     *
     * @param tables of the brief
     * @param count meshes from the centre to the escape wheel, at least 1
     * @param stride one choice in so many is tried
     * @param found trains found; halves without prospects of changing this front are left out. It must not change while
     *     listing
     * @param cancelled asked often; once true the list is cut short
     */
    public static List<LowerHalf> sample(
            HalfTables tables, int count, int stride, CellFront found, BooleanSupplier cancelled) {
        return new LowerHalves(tables, count, true, stride, List.of(), found, cancelled).list();
    }

    /**
     * All halves that no other one replaces and that have prospects.
     *
     * @param tables of the brief
     * @param count meshes from the centre to the escape wheel, at least 1
     * @param known halves known already, maybe by a search that knew of fewer refused trains; they replace most others before
     *     these are worked out
     * @param found trains found; halves without prospects of changing this front are left out. It must not change while
     *     listing
     * @param cancelled asked often; once true the list is cut short
     */
    public static List<LowerHalf> thinned(
            HalfTables tables, int count, List<LowerHalf> known, CellFront found, BooleanSupplier cancelled) {
        return new LowerHalves(tables, count, true, 1, known, found, cancelled).list();
    }

    /**
     * All halves, also those that another one replaces; for small briefs.
     *
     * @param tables of the brief
     * @param count meshes from the centre to the escape wheel, at least 1
     * @param cancelled asked often; once true the list is cut short
     */
    public static List<LowerHalf> all(HalfTables tables, int count, BooleanSupplier cancelled) {
        return new LowerHalves(tables, count, false, 1, List.of(), tables.nothing(), cancelled).list();
    }

    private List<LowerHalf> list() {
        List<EscapeSide> all = tables.sides(choices.size(), cancelled);
        List<EscapeSide> sides = stride == 1 ? all : EscapeSide.all(rules, choices, cancelled);
        // The work may have been cancelled before any side was there, and asked anew only for the other list.
        if (all.isEmpty() || sides.isEmpty() || cancelled.getAsBoolean()) {
            return List.of();
        }
        double longest =
                sides.stream().mapToDouble(side -> side.longestMemory).max().orElseThrow();
        LowerProspects prospects = new LowerProspects(rules, found, tables.uppers(longest, cancelled), choices.size());
        List<LowerHalf> listed = listed(sides, tables.outlook(choices.size(), all, cancelled), prospects);
        listed.sort(Comparator.<LowerHalf>comparingDouble(half -> half.runningLoad)
                .thenComparing((a, b) -> a.compareTo(b)));
        return listed;
    }

    private List<LowerHalf> listed(List<EscapeSide> sides, CentreOutlook outlook, LowerProspects prospects) {
        List<LowerHalf> halves = new ArrayList<>(thin ? known : List.of());
        LowerReaches reaches = new LowerReaches(tables, choices);
        // Each piece of work has a front of its own, whichever thread takes it: the pieces and the order in which they
        // are put together are always the same.
        sides.stream()
                .flatMap(side -> IntStream.range(0, LowerListing.PARTS)
                        .mapToObj(part -> (Supplier<List<LowerHalf>>) () -> new LowerListing(
                                        rules,
                                        choices,
                                        side,
                                        reaches,
                                        part,
                                        thin,
                                        frontOf(known, outlook, prospects),
                                        cancelled)
                                .list()))
                .toList()
                .parallelStream()
                .map(Supplier::get)
                .toList()
                .forEach(halves::addAll);
        return thin ? frontOf(halves, outlook, prospects).culled(cancelled) : halves;
    }

    private LowerFront frontOf(List<LowerHalf> halves, CentreOutlook outlook, LowerProspects prospects) {
        LowerFront front = new LowerFront(rules, outlook, prospects);
        for (LowerHalf half : halves) {
            if (cancelled.getAsBoolean()) {
                break;
            }
            front.offer(half);
        }
        return front;
    }

    static List<MeshChoice> everyFew(List<MeshChoice> place, int stride) {
        return IntStream.range(0, place.size())
                .filter(i -> i % stride == 0)
                .mapToObj(place::get)
                .toList();
    }
}
