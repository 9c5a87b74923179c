// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Objective;
import drumfall.solver.rating.Rating;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Searches with objectives told apart in larger steps where the front would hold too many trains.
 *
 * <p>The rule: as soon as a front holds more trains than {@link SearchSettings#mostTrains}, the search begins anew with the
 * step of every objective twice as large, as if the brief had asked for that, and so on until it ends with no more. What is
 * given is the complete front of a brief with these steps, whatever came before it; the outcome says how many times as large
 * they are. Taking trains out of the finer front instead would leave a list that nothing is proved of.
 */
final class FrontThinning {
    /** Any two trains are told apart by whole counts alone long before. */
    private static final int MOST_TIMES = 1 << 30;

    private final Brief brief;
    private final SearchListener listener;
    private final BooleanSupplier cancelled;
    private final SearchSettings settings;

    FrontThinning(Brief brief, SearchListener listener, BooleanSupplier cancelled, SearchSettings settings) {
        this.brief = brief;
        this.listener = listener;
        this.cancelled = cancelled;
        this.settings = settings;
    }

    SearchOutcome outcome() {
        int times = 1;
        while (true) {
            FrontBound bound = times < MOST_TIMES ? new FrontBound(settings.mostTrains()) : FrontBound.NONE;
            SearchOutcome outcome =
                    TrainSearch.once(brief.inSteps(times), new AsAsked(times), cancelled, settings, bound);
            if (!bound.exceeded() || cancelled.getAsBoolean()) {
                return asAsked(outcome, times);
            }
            times *= 2;
        }
    }

    private SearchOutcome asAsked(SearchOutcome outcome, int times) {
        return outcome.fold(
                proved -> new SearchOutcome.Proved(asAsked(proved.front(), times), times),
                stopped -> new SearchOutcome.Stopped(asAsked(stopped.front(), times), times),
                none -> none);
    }

    /** Ratings as the brief asks, whatever steps they were sought with. */
    private List<Rating> asAsked(List<Rating> ratings, int times) {
        List<Objective> objectives = brief.objectives();
        return times == 1
                ? ratings
                : ratings.stream().map(rating -> rating.toldApart(objectives)).toList();
    }

    private final class AsAsked implements SearchListener {
        private final int times;

        AsAsked(int times) {
            this.times = times;
        }

        @Override
        public void frontChanged(List<Rating> front) {
            listener.frontChanged(asAsked(front, times));
        }

        @Override
        public void progressed(SearchProgress progress) {
            listener.progressed(progress.inSteps(times));
        }
    }
}
