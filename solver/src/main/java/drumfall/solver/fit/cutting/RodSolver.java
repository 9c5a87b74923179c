// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import java.util.ArrayList;
import java.util.List;

/** Finds the fewest rods: bounds first, a counted search for what they leave open. */
final class RodSolver {
    /** Rods that the search descends through, one after another, at most. */
    private static final int MOST_SEARCHED = 100;

    private RodSolver() {}

    static RodSolution solve(PieceSizes sizes) {
        int[] demand = sizes.demand();
        List<int[]> best = FirstFit.rods(sizes, demand);
        int bound = sizes.lengthBound(demand);
        if (best.size() > bound) {
            PriceProgramme programme = PriceProgramme.solved(sizes);
            bound = programme.lowerBound();
            best = fewer(best, completed(sizes, programme));
        }
        return best.size() > bound && best.size() <= MOST_SEARCHED
                ? searched(sizes, best, bound)
                : new RodSolution(best, bound);
    }

    /** Rounded down, and the rest by search if that is short, else by first fit. */
    private static List<int[]> completed(PieceSizes sizes, PriceProgramme programme) {
        List<int[]> rods = new ArrayList<>(programme.wholeRods());
        int[] left = sizes.demand();
        rods.forEach(rod -> PriceProgramme.take(left, rod));
        List<int[]> rest = FirstFit.rods(sizes, left);
        int wanted = Math.max(sizes.lengthBound(left), programme.lowerBound() - rods.size());
        if (rest.size() > wanted && rest.size() <= MOST_SEARCHED) {
            rest = RodSearch.of(sizes, left, wanted).rods().orElse(rest);
        }
        rods.addAll(rest);
        return rods;
    }

    private static RodSolution searched(PieceSizes sizes, List<int[]> best, int from) {
        for (int rods = from; rods < best.size(); rods++) {
            RodSearch.Finding finding = RodSearch.of(sizes, sizes.demand(), rods);
            if (finding.end() != RodSearch.End.IMPOSSIBLE) {
                return new RodSolution(finding.rods().orElse(best), rods);
            }
        }
        return new RodSolution(best, best.size());
    }

    private static List<int[]> fewer(List<int[]> first, List<int[]> second) {
        return second.size() < first.size() ? second : first;
    }
}
