// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.search.SearchProgress;
import drumfall.ui.wording.FigureWording;
import drumfall.ui.wording.SearchWording;
import java.util.Optional;

/**
 * What the search is doing.
 *
 * @param running whether one runs
 * @param progress the last it told; empty if none runs or it has told nothing yet
 * @param found trains of the front known so far for the brief it searches
 */
public record SearchState(boolean running, Optional<SearchProgress> progress, int found) {
    /** No search runs. */
    public static final SearchState IDLE = new SearchState(false, Optional.empty(), 0);

    static final SearchState STARTED = new SearchState(true, Optional.empty(), 0);

    /**
     * The progress in words.
     *
     * @param units the units of lengths
     */
    public String text(UnitSystem units) {
        return progress.map(now -> Texts.of(
                                "search." + now.stage().name(),
                                now.meshesAbove(),
                                now.meshesBelow(),
                                percent(now.done()))
                        + SearchWording.searched(now, FigureWording.in(units)))
                .orElseGet(() -> Texts.of("search.STARTED"));
    }

    private static long percent(double share) {
        return Math.round(100 * Math.max(0, Math.min(1, share)));
    }
}
