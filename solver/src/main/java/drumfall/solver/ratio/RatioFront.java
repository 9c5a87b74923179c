// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * The ratios that no other beats in both nearness to the target and size of the largest wheel or pinion.
 *
 * @param ratios the nearest and largest first; each is smaller and farther than the one before
 * @param proven whether every size was covered, so that nothing within the bounds beats a listed ratio and none is missing;
 *     false only when the search was cancelled
 */
public record RatioFront(List<SizedRatio> ratios, boolean proven) {
    /** Copies the list. */
    public RatioFront {
        ratios = List.copyOf(ratios);
    }

    /**
     * Searches to the end or until cancelled.
     *
     * <p>The nearest ratio of the whole range is searched with proof, then the nearest with every count smaller than the
     * largest of its smallest train, and so on until a range is empty. Each search proves that nothing of its size is
     * nearer. Where a search finds the distance of the one before again, with a smaller train than had been listed, the
     * smaller takes the larger one's place.
     *
     * @param query what to look for; the number of wanted ratios does not matter
     * @param cancelled asked now and then, from the calling thread; true ends the search early
     */
    public static RatioFront search(RatioQuery query, BooleanSupplier cancelled) {
        List<SizedRatio> front = new ArrayList<>();
        int floor = Math.max(query.wheels().least(), query.leaves().least());
        int most = Math.max(query.wheels().most(), query.leaves().most());
        while (most >= floor) {
            RatioOutcome outcome = RatioSearch.search(query.nearestWithMost(most), cancelled);
            if (!outcome.proven()) {
                return new RatioFront(front, false);
            }
            SizedRatio found = smallest(outcome.entries().get(0), query.trainsPerRatio());
            front.removeIf(larger ->
                    !larger.entry().approximation().isNearerThan(found.entry().approximation()));
            front.add(found);
            most = found.largestCount() - 1;
        }
        return new RatioFront(front, true);
    }

    private static SizedRatio smallest(RatioEntry entry, int trainsPerRatio) {
        int largest = Collections.min(
                entry.trains().stream().map(RatioTrain::largestCount).toList());
        List<RatioTrain> trains = entry.trains().stream()
                .filter(train -> train.largestCount() == largest)
                .toList();
        List<RatioTrain> listed = trains.subList(0, Math.min(trains.size(), trainsPerRatio));
        boolean all = entry.allListed() && listed.size() == trains.size();
        return new SizedRatio(largest, new RatioEntry(entry.approximation(), listed, all));
    }
}
