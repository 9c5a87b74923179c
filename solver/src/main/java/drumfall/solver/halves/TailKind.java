// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import java.util.List;

/**
 * Tails of lower halves whose meshes are of one kind each: a module and a few neighbouring numbers of leaves. The least of
 * a kind, each figure on its own, lies near the least of some tail in it; that of all tails together belongs to none.
 *
 * @param number of the kind, from 0
 * @param first what may stand first, lowest ratio first
 * @param rest the kind of the rest of the tail; absent of one mesh
 * @param bounds the least that such tails need
 * @param lowestBefore smallest ratio of meshes before the tail
 * @param highestBefore largest ratio of meshes before the tail
 * @param largestRatio of any such tail
 * @param modules one bit for each module that all of them use
 */
record TailKind(
        int number,
        List<MeshChoice> first,
        TailKind rest,
        TailBounds bounds,
        double lowestBefore,
        double highestBefore,
        double largestRatio,
        long modules) {
    /** Ratios are products of a few quotients. */
    private static final double ROUNDING = 1e-9;

    /**
     * A kind of last meshes.
     *
     * @param number of the kind
     * @param group what may stand there, at least one
     * @param bounds the least that they need
     * @param before what may stand at each place before them
     */
    static TailKind last(int number, List<MeshChoice> group, TailBounds bounds, List<List<MeshChoice>> before) {
        return new TailKind(
                number,
                group,
                null,
                bounds,
                lowest(before),
                highest(before),
                highest(List.of(group)),
                MeshGroups.modules(group));
    }

    /**
     * This kind behind a mesh.
     *
     * @param next number of the new kind
     * @param group what may stand in front, at least one
     * @param longer the least that such tails need
     * @param before what may stand at each place before them
     */
    TailKind behind(int next, List<MeshChoice> group, TailBounds longer, List<List<MeshChoice>> before) {
        return new TailKind(
                next,
                group,
                this,
                longer,
                lowest(before),
                highest(before),
                highest(List.of(group)) * largestRatio,
                MeshGroups.modules(group) | modules);
    }

    private static double lowest(List<List<MeshChoice>> places) {
        return places.stream().mapToDouble(place -> place.get(0).ratio).reduce(1, (a, b) -> a * b);
    }

    private static double highest(List<List<MeshChoice>> places) {
        return places.stream()
                .mapToDouble(place -> place.get(place.size() - 1).ratio)
                .reduce(1, (a, b) -> a * b);
    }

    /**
     * The first choice that, with the rest of the tail, can multiply the speed enough.
     *
     * @param ratio the least ratio of the whole tail
     * @return index of the choice; their number if there is none
     */
    int firstReaching(double ratio) {
        return MeshGroups.firstAtLeast(first, ratio / (rest == null ? 1 : rest.largestRatio) * (1 - ROUNDING));
    }
}
