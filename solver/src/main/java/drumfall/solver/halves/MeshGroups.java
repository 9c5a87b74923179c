// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Choices at a place sorted into groups of one module and a few neighbouring numbers of leaves, so that the best of a group,
 * each figure on its own, lies near some choice in it.
 */
final class MeshGroups {
    private MeshGroups() {}

    /**
     * The finest groups that are not too many.
     *
     * @param place what may stand there, at least one, lowest ratio first
     * @param times each group is worked with so many times
     * @param most times to work with any group
     * @return the groups, smallest module first, then fewest leaves, each lowest ratio first
     */
    static List<List<MeshChoice>> of(List<MeshChoice> place, double times, double most) {
        int fewest = place.stream().mapToInt(choice -> choice.leaves).min().orElseThrow();
        int largest = place.stream().mapToInt(choice -> choice.leaves).max().orElseThrow();
        long modules = place.stream()
                .mapToInt(choice -> choice.moduleNumber)
                .distinct()
                .count();
        int ranges = IntStream.rangeClosed(1, largest - fewest + 1)
                .filter(number -> modules * number * times <= most)
                .max()
                .orElse(1);
        int width = (largest - fewest + ranges) / ranges;
        TreeMap<Integer, List<MeshChoice>> groups = new TreeMap<>();
        for (MeshChoice choice : place) {
            int group = choice.moduleNumber * (largest + 1) + (choice.leaves - fewest) / width;
            groups.computeIfAbsent(group, number -> new ArrayList<>()).add(choice);
        }
        return List.copyOf(groups.values());
    }

    /**
     * The first choice whose ratio is at least so much.
     *
     * @param choices lowest ratio first
     * @param ratio wheel over pinion
     * @return index of the choice; their number if there is none
     */
    static int firstAtLeast(List<MeshChoice> choices, double ratio) {
        int low = 0;
        int high = choices.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (choices.get(middle).ratio < ratio) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** One bit for each module that all choices of a group have. */
    static long modules(List<MeshChoice> group) {
        return group.stream().mapToLong(choice -> 1L << choice.moduleNumber).reduce(-1, (a, b) -> a & b);
    }
}
