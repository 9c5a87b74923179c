// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Hands the pieces of every rod to the arbors of their lengths, in the order the arbors were given. */
final class NamedCuts {
    private final PieceSizes sizes;
    private final List<int[]> handedOut = new ArrayList<>();

    private NamedCuts(PieceSizes sizes) {
        this.sizes = sizes;
        sizes.arbors().forEach(group -> handedOut.add(new int[group.size()]));
    }

    /** The cuts, rods that are cut alike taken together. */
    static List<RodCut> of(PieceSizes sizes, List<int[]> patterns) {
        NamedCuts cuts = new NamedCuts(sizes);
        Map<Map<String, Integer>, RodCut> alike = new LinkedHashMap<>();
        for (int[] pattern : patterns) {
            RodCut cut = cuts.named(pattern);
            alike.merge(cut.pieces(), cut, (a, b) -> new RodCut(a.pieces(), a.rods() + 1, a.offcut()));
        }
        return List.copyOf(alike.values());
    }

    private RodCut named(int[] pattern) {
        Map<String, Integer> pieces = new LinkedHashMap<>();
        for (int kind = 0; kind < pattern.length; kind++) {
            for (int piece = 0; piece < pattern[kind]; piece++) {
                pieces.merge(nextName(kind), 1, Integer::sum);
            }
        }
        long sawn = sizes.used(pattern);
        return new RodCut(pieces, 1, Math.max(0, sizes.capacity() - sizes.kerf() - sawn));
    }

    private String nextName(int kind) {
        List<ArborPiece> group = sizes.arbors().get(kind);
        int[] given = handedOut.get(kind);
        int place = 0;
        while (given[place] == group.get(place).count() * sizes.kits()) {
            place++;
        }
        given[place]++;
        return group.get(place).name();
    }
}
