// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.SmallBriefs;
import java.util.List;
import java.util.Random;

/** One brief with one number of meshes on each side and all its halves. */
record Halves(TrainRater rater, List<UpperHalf> uppers, List<LowerHalf> lowers) {
    private static final boolean FULL = "full".equals(System.getProperty("drumfall.samples"));
    private static final List<Brief> BRIEFS = SmallBriefs.some(FULL ? 200 : 25, 500);

    UpperHalf anyUpper(Random random) {
        return uppers.get(random.nextInt(uppers.size()));
    }

    int below() {
        return lowers.get(0).meshes().size();
    }

    LowerHalf anyLower(Random random) {
        return lowers.get(random.nextInt(lowers.size()));
    }

    /** Of seeded small briefs, those that have some. */
    static List<Halves> all() {
        return BRIEFS.stream()
                .map(Halves::of)
                .filter(halves -> !halves.uppers().isEmpty())
                .toList();
    }

    private static Halves of(Brief brief) {
        TrainRater rater = new TrainRater(brief);
        int below = brief.train().below().to();
        int above = brief.train().above().to();
        HalfTables tables = new HalfTables(rater);
        List<LowerHalf> lowers = LowerHalves.all(tables, below, () -> false);
        List<UpperHalf> uppers = lowers.isEmpty() ? List.of() : UpperHalves.all(tables, above, lowers, () -> false);
        return new Halves(rater, uppers, lowers);
    }
}
