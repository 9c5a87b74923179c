// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.layout.AngleGrid;
import drumfall.solver.rating.Blame;
import drumfall.solver.rating.PlaneLimits;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.train.Train;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Says whether half the step between directions adds a train to the fronts of the bundled briefs; a main to run by hand,
 * never asserted, as the heading of every front names its grid.
 *
 * <p>Every second direction of the finer grid is one of the coarser, so that a train is refused on the finer grid only if
 * it is on the coarser: where nothing was refused there, nothing can be added.
 *
 * <p>Run from the root: {@code mvn -q -Pbench -pl solver test-compile exec:java -Dbench=drumfall.solver.search.GridBench}.
 */
public final class GridBench {
    private GridBench() {}

    /**
     * Searches the briefs on both grids.
     *
     * @param arguments names of bundled briefs; all if there are none
     */
    public static void main(String[] arguments) {
        List<String> names = arguments.length > 0 ? List.of(arguments) : BundledBriefs.names();
        for (String name : names) {
            Brief brief = BundledBriefs.load(name).orElseThrow();
            Found coarse = front(brief, TrainPlacing.GRID);
            System.out.println(name + ": " + coarse);
            Found fine = front(brief, new AngleGrid(2 * TrainPlacing.GRID.steps()));
            System.out.println(name + ": " + fine);
            System.out.println("  added   " + less(fine.trains, coarse.trains));
            System.out.println("  dropped " + less(coarse.trains, fine.trains));
        }
    }

    private record Found(int steps, Set<Train> trains, int asked, int refused) {
        @Override
        public String toString() {
            return "%d directions, %d trains, %d asked for places, %d refused"
                    .formatted(steps, trains.size(), asked, refused);
        }
    }

    private static Set<Train> less(Set<Train> from, Set<Train> taken) {
        Set<Train> left = new LinkedHashSet<>(from);
        left.removeAll(taken);
        return left;
    }

    private static Found front(Brief brief, AngleGrid grid) {
        TrainRater plain = new TrainRater(brief);
        TrainPlacing placing = new TrainPlacing(plain, grid);
        AtomicInteger asked = new AtomicInteger();
        AtomicInteger refused = new AtomicInteger();
        SearchOutcome outcome = new TrainSearch(
                        plain.within(PlaneLimits.of(plain, () -> false)),
                        SearchListener.SILENT,
                        () -> false,
                        SearchSettings.USUAL,
                        train -> {
                            asked.incrementAndGet();
                            Optional<Blame> blame = placing.blame(train, () -> false);
                            blame.ifPresent(to -> refused.incrementAndGet());
                            return blame;
                        })
                .found();
        Set<Train> trains = new LinkedHashSet<>();
        outcome.front().stream().map(Rating::train).forEach(trains::add);
        return new Found(grid.steps(), trains, asked.get(), refused.get());
    }
}
