// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import drumfall.solver.brief.Brief;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.SearchProgress;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Why a brief has no train, and which single figure would help.
 *
 * @param clashes the minimal clashes
 * @param nearest what easing each figure alone does, in the order of {@link Easing#of}; fewer if the time was over, none
 *     if the brief has trains
 */
public record WhyNoTrain(Clashes clashes, List<Nearest> nearest) {
    /** Clashes listed at most. */
    public static final int MOST_CLASHES = 6;

    /** A clash may take so long, ns. */
    private static final long CLASH_TIME = 90_000_000_000L;

    /** One figure may take so long, ns. */
    private static final long FIGURE_TIME = 60_000_000_000L;

    /** Copies the list. */
    public WhyNoTrain {
        nearest = List.copyOf(nearest);
    }

    /**
     * Explains a brief.
     *
     * @param brief the brief
     * @param told is told of each figure as it becomes known
     * @param listener is told how it goes on
     * @param cancelled asked all the time; once true what is known is given
     */
    public static WhyNoTrain of(
            Brief brief, Consumer<Nearest> told, SearchListener listener, BooleanSupplier cancelled) {
        return of(brief, known -> {}, told, listener, cancelled);
    }

    /**
     * Explains a brief and tells the clashes, too, as they become known.
     *
     * @param brief the brief
     * @param listed is told of the clashes known so far as each is found, and of the whole list once it is there; from then
     *     on its numbers stand
     * @param told is told of each figure as it becomes known
     * @param listener is told how it goes on
     * @param cancelled asked all the time; once true what is known is given
     */
    public static WhyNoTrain of(
            Brief brief,
            Consumer<Clashes> listed,
            Consumer<Nearest> told,
            SearchListener listener,
            BooleanSupplier cancelled) {
        Clashes clashes = ClashLister.of(brief, MOST_CLASHES, listed, listener, within(CLASH_TIME, cancelled));
        listed.accept(clashes);
        List<Nearest> nearest = new ArrayList<>();
        if (!clashes.list().isEmpty()) {
            for (Easing easing : Easing.of(brief)) {
                if (cancelled.getAsBoolean()) {
                    break;
                }
                listener.progressed(
                        new SearchProgress(SearchProgress.Stage.EXPLAINING, 0, 0, 1 - 1.0 / (2 + nearest.size())));
                Nearest found = NearestValues.of(brief, easing, clashes, within(FIGURE_TIME, cancelled));
                nearest.add(found);
                told.accept(found);
            }
        }
        return new WhyNoTrain(clashes, nearest);
    }

    private static BooleanSupplier within(long nanoseconds, BooleanSupplier cancelled) {
        long start = System.nanoTime();
        return () -> cancelled.getAsBoolean() || System.nanoTime() - start > nanoseconds;
    }
}
