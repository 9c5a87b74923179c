// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.display;

import drumfall.solver.ratio.RatioEntry;
import drumfall.solver.ratio.RatioFront;
import drumfall.solver.ratio.RatioOutcome;
import drumfall.solver.ratio.RatioSearch;
import drumfall.solver.ratio.SizedRatio;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Finds the trains that drive a display with the least error, and proves that none within the bounds has less.
 *
 * <p>The error in seconds a day is the distance of drivers over followers from their target, times what does not depend on
 * the train. The proof and the order of {@link RatioSearch} are therefore those of the error in seconds a day. Had the
 * search been for followers over drivers, as a clockmaker reckons, it would have ranked by the error of the period, and two
 * trains on either side of the target could have changed places.
 */
public final class DisplaySearch {
    private DisplaySearch() {}

    /**
     * The displays of least error, in order of error.
     *
     * @param cancelled asked now and then, from the calling thread; true ends the search early, not proven
     */
    public static DisplayOutcome nearest(DisplayQuery query, BooleanSupplier cancelled) {
        RatioOutcome outcome = RatioSearch.search(query.ratios(), cancelled);
        return outcome(query, outcome.entries(), outcome.proven());
    }

    /**
     * The displays that no other beats in both error and size of the largest wheel; each has only its trains of that size.
     *
     * @param query the number of wanted speeds does not matter
     * @param cancelled asked now and then, from the calling thread; true ends the search early, not proven
     */
    public static DisplayOutcome front(DisplayQuery query, BooleanSupplier cancelled) {
        RatioFront front = RatioFront.search(query.ratios(), cancelled);
        return outcome(query, front.ratios().stream().map(SizedRatio::entry).toList(), front.proven());
    }

    private static DisplayOutcome outcome(DisplayQuery query, List<RatioEntry> entries, boolean proven) {
        return new DisplayOutcome(
                entries.stream().map(entry -> option(query, entry)).toList(), proven);
    }

    private static DisplayOption option(DisplayQuery query, RatioEntry entry) {
        DisplayError error = new DisplayError(query.display(), entry.error().multiply(query.arborTurns()));
        List<DisplayTrain> trains =
                entry.trains().stream().map(DisplayTrain::of).toList();
        return new DisplayOption(entry.ratio(), error, trains, entry.allListed());
    }
}
