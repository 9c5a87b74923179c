// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Wheels and pinions of a train, whatever their order.
 *
 * <p>Which wheel turns which pinion, and in what order, leaves the ratio as it is; so one train stands for all of them,
 * with wheels and pinions each listed from most to fewest.
 *
 * @param toothCounts one wheel for each mesh, at least one mesh, each count at least 1
 * @param leafCounts one pinion for each mesh, each at least 1
 */
public record RatioTrain(List<Integer> toothCounts, List<Integer> leafCounts) {
    /**
     * Checks the counts and puts each list in order.
     *
     * @throws RatioException if the lists are empty, differ in length or hold a count below 1
     */
    public RatioTrain {
        if (toothCounts.isEmpty()) {
            throw RatioException.refused("number of wheels", 0, "be at least 1", "leave the display on its arbor");
        }
        if (toothCounts.size() != leafCounts.size()) {
            throw RatioException.refused(
                    "number of pinions",
                    leafCounts.size(),
                    "be the number of wheels (%d)".formatted(toothCounts.size()),
                    "give each mesh one of both");
        }
        toothCounts = mostFirst(toothCounts);
        leafCounts = mostFirst(leafCounts);
        pairs(toothCounts, leafCounts);
    }

    private static List<Integer> mostFirst(List<Integer> counts) {
        return counts.stream().sorted(Comparator.reverseOrder()).toList();
    }

    private static List<WheelAndPinion> pairs(List<Integer> toothCounts, List<Integer> leafCounts) {
        return IntStream.range(0, toothCounts.size())
                .mapToObj(mesh -> new WheelAndPinion(toothCounts.get(mesh), leafCounts.get(mesh)))
                .toList();
    }

    /** The largest wheel with the largest pinion, and so on: one of the arrangements, in no order of the trade. */
    public List<WheelAndPinion> pairs() {
        return pairs(toothCounts, leafCounts);
    }

    /** The exact product of wheels over pinions. */
    public BigFraction ratio() {
        return WheelAndPinion.product(pairs());
    }

    /** The most teeth or leaves of any of its wheels and pinions. */
    public int largestCount() {
        return Math.max(toothCounts.get(0), leafCounts.get(0));
    }

    /** How many ordered lists of wheels and of pinions this train stands for. */
    public long arrangementCount() {
        return arrangements(toothCounts) * arrangements(leafCounts);
    }

    private static long arrangements(List<Integer> counts) {
        Map<Integer, Integer> seen = new HashMap<>();
        long arrangements = 1;
        for (int placed = 1; placed <= counts.size(); placed++) {
            int alike = seen.merge(counts.get(placed - 1), 1, Integer::sum);
            arrangements = Math.multiplyExact(arrangements, placed) / alike;
        }
        return arrangements;
    }
}
