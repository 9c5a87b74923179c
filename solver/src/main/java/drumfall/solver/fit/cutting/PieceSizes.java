// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The lengths to be cut, each once, longest first, with how many are wanted.
 *
 * <p>A kerf follows every piece but may hang over the end of the rod: k pieces fit if {@code Σ (l + kerf) ≤ L + kerf}.
 *
 * @param arbors arbors of each length
 * @param sizes length plus kerf, nm
 * @param wanted pieces of each length for all kits
 * @param capacity length of the rod plus kerf, nm
 * @param kerf nm
 * @param kits number of kits
 */
record PieceSizes(
        List<List<ArborPiece>> arbors, List<Long> sizes, List<Integer> wanted, long capacity, long kerf, int kits) {
    static PieceSizes of(RodStock rod, List<ArborPiece> arbors, int kits, long kerf) {
        TreeMap<Long, List<ArborPiece>> byLength = arbors.stream()
                .collect(Collectors.groupingBy(
                        ArborPiece::length, () -> new TreeMap<>(Comparator.reverseOrder()), Collectors.toList()));
        List<Long> sizes = new ArrayList<>();
        List<Integer> wanted = new ArrayList<>();
        byLength.forEach((length, group) -> {
            sizes.add(length + kerf);
            wanted.add(group.stream().mapToInt(arbor -> arbor.count() * kits).sum());
        });
        return new PieceSizes(List.copyOf(byLength.values()), sizes, wanted, rod.length() + kerf, kerf, kits);
    }

    int kinds() {
        return sizes.size();
    }

    int[] demand() {
        return wanted.stream().mapToInt(Integer::intValue).toArray();
    }

    /** What a number of each kind takes of the capacity, nm. */
    long used(int[] counts) {
        long sum = 0;
        for (int kind = 0; kind < counts.length; kind++) {
            sum += counts[kind] * sizes.get(kind);
        }
        return sum;
    }

    /** The most pieces of a kind that are worth putting on one rod. */
    int mostOnRod(int kind) {
        return (int) Math.min(wanted.get(kind), capacity / sizes.get(kind));
    }

    /** Rods below which the mere lengths do not go. */
    int lengthBound(int[] demand) {
        return Math.toIntExact((used(demand) + capacity - 1) / capacity);
    }
}
