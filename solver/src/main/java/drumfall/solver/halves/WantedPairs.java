// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import static drumfall.solver.halves.UpperLines.RUNNING;

import drumfall.solver.rating.CellFront;
import drumfall.solver.rating.TrainRater;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The halves that stand in at least one train which can still change the front.
 *
 * <p>Halves are listed for prospects beside the best of all others, each figure on its own; most of them turn out to have
 * none beside any half that was listed. A pair goes if it is too heavy even at the least weight that its figures bound, or
 * if a train of the front is as good at that weight; the front only gets better, so the pair stays out. That is what the
 * join asks of each pair first, here by all processors.
 *
 * @param uppers the upper halves, in the order given
 * @param lowers the lower halves, in the order given
 */
public record WantedPairs(List<UpperHalf> uppers, List<LowerHalf> lowers) {
    /**
     * Goes through all pairs.
     *
     * @param rater rates against the brief
     * @param uppers the upper halves, all with the same number of meshes
     * @param lowers the lower halves, all with the same number of meshes
     * @param found the front that has been found; must not change meanwhile
     * @param cancelled asked often; once true the lists are cut short
     */
    public static WantedPairs of(
            TrainRater rater,
            List<UpperHalf> uppers,
            List<LowerHalf> lowers,
            CellFront found,
            BooleanSupplier cancelled) {
        if (uppers.isEmpty() || lowers.isEmpty()) {
            return new WantedPairs(List.of(), List.of());
        }
        Search search = new Search(rater, lowers, found);
        List<BitSet> partners = uppers.parallelStream()
                .map(upper -> cancelled.getAsBoolean() ? new BitSet() : search.partners(upper))
                .toList();
        BitSet wanted = new BitSet();
        partners.forEach(wanted::or);
        return new WantedPairs(
                IntStream.range(0, uppers.size())
                        .filter(i -> !partners.get(i).isEmpty())
                        .mapToObj(uppers::get)
                        .toList(),
                wanted.stream().mapToObj(lowers::get).toList());
    }

    /** Looks for partners of upper halves among the same lower ones. Shared by all threads. */
    private static final class Search {
        private final HalfJoin join;
        private final FrontGrid grid;
        private final CellFront found;
        private final List<LowerHalf> lowers;
        private final int[] lightestFirst;
        private final PartSums least;
        private final double recommended;
        private final int objectives;

        Search(TrainRater rater, List<LowerHalf> lowers, CellFront found) {
            this.join = new HalfJoin(rater);
            this.grid = new FrontGrid(new HalfRules(rater), found);
            this.found = found;
            this.lowers = lowers;
            this.lightestFirst = IntStream.range(0, lowers.size())
                    .boxed()
                    .sorted(Comparator.comparingDouble(i -> lowers.get(i).runningLoad))
                    .mapToInt(i -> i)
                    .toArray();
            this.least = lowers.stream()
                    .map(half -> half.sums)
                    .reduce(PartSums::least)
                    .orElseThrow();
            this.recommended = rater.objectives().recommended(1);
            this.objectives = rater.objectives().asked().size();
        }

        /** Places in the list of the lower halves beside which an upper one may change the front. */
        BitSet partners(UpperHalf upper) {
            BitSet partners = new BitSet();
            int meshes = upper.meshes.size() + lowers.get(0).meshes.size();
            double most = grid.heaviestLeast(upper.sums.with(least), meshes);
            double[] values = new double[objectives];
            for (int index : lightestFirst) {
                LowerHalf lower = lowers.get(index);
                if (upper.lines[RUNNING] + upper.lines[RUNNING + 1] * lower.runningLoad > most) {
                    break;
                }
                double weight = join.leastRecommendedWeight(upper, lower);
                if (weight <= grid.heaviestLeast(upper.sums.with(lower.sums), meshes) * recommended
                        && join.allows(upper, lower, weight)) {
                    join.values(upper, lower, weight, values);
                    if (weight <= found.heaviest(values)) {
                        partners.set(index);
                    }
                }
            }
            return partners;
        }
    }
}
