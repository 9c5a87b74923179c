// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import drumfall.solver.brief.Brief;
import drumfall.solver.search.Arcs;
import drumfall.solver.search.DemandOracle;
import drumfall.solver.search.DemandOracle.Answer;
import drumfall.solver.search.HeldDemand;
import drumfall.solver.search.SearchListener;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Lists the minimal clashes of a brief: sets of demands that no train meets, while trains exist as soon as any one is
 * dropped.
 *
 * <p>An open set, as large as can be, is taken from the {@link ClashMap}. If trains meet it, everything within what they
 * meet is marked off; if none does, it is thinned to a minimal clash and everything around that is marked off. When
 * nothing is open, the list is complete (Liffiton, Previti, Malik and Marques-Silva, "Fast, flexible MUS enumeration",
 * Constraints 21, 2016). What is marked off holds no clash that is not listed: within a set that some train meets nothing
 * clashes, and around a clash nothing else is minimal.
 */
public final class ClashLister {
    private final Brief brief;
    private final DemandOracle oracle;
    private final ClashMap map;
    private final ExplainSettings settings;
    private final List<Found> found = new ArrayList<>();
    private boolean allAnswered = true;

    /** A clash as bits. */
    private record Found(long set, boolean minimal) {}

    private ClashLister(Brief brief, SearchListener listener, BooleanSupplier cancelled, ExplainSettings settings) {
        this.brief = brief;
        this.oracle = new DemandOracle(brief, listener, cancelled, settings.questions());
        this.map = new ClashMap(oracle.all());
        this.settings = settings;
    }

    /**
     * The minimal clashes of a brief.
     *
     * @param brief the brief
     * @param most how many are listed at most, from 1 to 12
     * @param listener is told how it goes on
     * @param cancelled asked all the time; once true what is known is given, as not complete
     * @throws IllegalArgumentException if {@code most} is out of range
     */
    public static Clashes of(Brief brief, int most, SearchListener listener, BooleanSupplier cancelled) {
        return of(brief, most, known -> {}, listener, cancelled);
    }

    /**
     * The minimal clashes of a brief, told while they are found.
     *
     * @param brief the brief
     * @param most how many are listed at most, from 1 to 12
     * @param told is told of the clashes known so far as each is found; numbers change until all are there
     * @param listener is told how it goes on
     * @param cancelled asked all the time; once true what is known is given, as not complete
     * @throws IllegalArgumentException if {@code most} is out of range
     */
    public static Clashes of(
            Brief brief, int most, Consumer<Clashes> told, SearchListener listener, BooleanSupplier cancelled) {
        return of(brief, most, told, listener, cancelled, ExplainSettings.USUAL);
    }

    /** The minimal clashes of a brief, found in a stated way; a complete list does not depend on it. */
    static Clashes of(
            Brief brief,
            int most,
            Consumer<Clashes> told,
            SearchListener listener,
            BooleanSupplier cancelled,
            ExplainSettings settings) {
        if (most < 1 || most > 12) {
            throw new IllegalArgumentException(
                    "The number of clashes (%d) must be from 1 to 12. Maybe ask for 6.".formatted(most));
        }
        return new ClashLister(brief, listener, cancelled, settings).list(most, told);
    }

    private Clashes list(int most, Consumer<Clashes> told) {
        OptionalLong open = map.open();
        while (open.isPresent() && found.size() < most && !oracle.cancelled()) {
            int before = found.size();
            explore(open.getAsLong());
            open = map.open();
            if (found.size() > before) {
                told.accept(known(false));
            }
        }
        return known(open.isEmpty() && allAnswered);
    }

    private Clashes known(boolean complete) {
        List<MinimalClash> clashes = found.stream()
                .sorted(Comparator.<Found>comparingInt(clash -> Long.bitCount(clash.set()))
                        .thenComparingLong(Found::set))
                .map(clash -> new MinimalClash(members(clash.set()), clash.minimal()))
                .toList();
        return new Clashes(clashes, complete);
    }

    private void explore(long set) {
        switch (oracle.meets(set)) {
            case SOME -> map.met(settings.take(ExplainShortcut.MARK_WIDENED) ? oracle.widened(set) : set);
            case NONE -> {
                Found clash = thinned(set);
                found.add(clash);
                map.clash(clash.set());
            }
            case UNKNOWN -> {
                // Marked off so that other sets are asked about; the list is no longer complete.
                allAnswered = false;
                map.met(set);
            }
        }
    }

    /**
     * A minimal clash within one. A demand without which the rest can be met is in every clash within the rest: one without
     * it would be within what is met. As soon as the demands found to be so clash by themselves, they are the only minimal
     * clash there, since each of them is in every clash; the others would all be dropped, and need no question each.
     */
    private Found thinned(long set) {
        long clash = set;
        long needed = 0;
        boolean minimal = true;
        List<Integer> order = new ArrayList<>(oracle.cheapestFirst());
        Collections.reverse(order);
        for (int i : order) {
            long smaller = clash & ~(1L << i);
            if (smaller == clash) {
                continue;
            }
            Answer answer = oracle.meets(smaller);
            clash = answer == Answer.NONE ? smaller : clash;
            minimal &= answer != Answer.UNKNOWN;
            needed |= answer == Answer.SOME ? 1L << i : 0;
            if (answer == Answer.SOME
                    && settings.take(ExplainShortcut.NEEDED_ALONE)
                    && oracle.meets(needed) == Answer.NONE) {
                return new Found(needed, true);
            }
        }
        allAnswered &= minimal;
        return new Found(clash, minimal);
    }

    private List<HeldDemand> members(long set) {
        return set == 0 && Arcs.noEscapeWheelKeepsTheArc(brief) ? List.of(Arcs.HELD) : oracle.demands(set);
    }
}
