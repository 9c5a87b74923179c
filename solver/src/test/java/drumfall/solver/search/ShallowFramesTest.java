// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.halves.HalfJoin;
import drumfall.solver.halves.HalfTables;
import drumfall.solver.halves.LowerHalf;
import drumfall.solver.halves.LowerHalves;
import drumfall.solver.halves.UpperHalf;
import drumfall.solver.halves.UpperHalves;
import drumfall.solver.rating.PlaneLimits;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.SmallBriefs;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Frames between the least depth of any planes and that in which everything can be kept apart. */
class ShallowFramesTest {
    private static final boolean FULL = "full".equals(System.getProperty("drumfall.samples"));

    /** The drum of 60 mm with its flanges, click, a wheel, gaps and end shake takes 78.6 mm, mm. */
    private static final int LEAST_DEPTH = 79;

    /** With three more planes of 8 mm apart everything finds room. */
    private static final int DEPTHS = 26;

    /** The same front is found where trains too deep for the frame are only refused one by one when they are placed. */
    @Test
    void the_front_is_the_same_whether_planes_are_packed_before_or_while_trains_are_placed() {
        int options = 0;
        for (Brief brief : briefs(FULL ? 300 : 14, 9000)) {
            List<Train> packed = front(brief, SearchSettings.USUAL);

            assertThat(packed).isEqualTo(front(brief, SearchSettings.USUAL.without(Shortcut.PACK_PLANES)));
            options += packed.size();
        }
        assertThat(options).isGreaterThan(5);
    }

    private static List<Train> front(Brief brief, SearchSettings settings) {
        return TrainSearch.unexplained(brief, SearchListener.SILENT, () -> false, settings).front().stream()
                .map(Rating::train)
                .toList();
    }

    /** What is refused beforehand is what the placing of arbors proves to have no place; of most frames both kinds are seen. */
    @Test
    void joins_too_deep_for_the_frame_have_no_place() {
        int refused = 0;
        int placed = 0;
        for (Brief brief : briefs(FULL ? 300 : 40, 9500)) {
            TrainRater plain = new TrainRater(brief);
            TrainRater rater = plain.within(PlaneLimits.of(plain, () -> false));
            TrainPlacing placing = new TrainPlacing(plain);
            HalfJoin join = new HalfJoin(rater);
            for (Pair pair : some(rater, plain, 8)) {
                boolean place = placing.placeable(join.train(pair.upper, pair.lower), () -> false);
                boolean deepEnough = pair.listed && join.deepEnough(pair.upper, pair.lower);
                assertThat(deepEnough || !place)
                        .as("%s", join.train(pair.upper, pair.lower))
                        .isTrue();
                refused += deepEnough ? 0 : 1;
                placed += place ? 1 : 0;
            }
        }
        assertThat(refused).isGreaterThan(10);
        assertThat(placed).isGreaterThan(10);
    }

    /** Halves joined at random; {@code listed} if the frame's depth leaves both of them in the lists. */
    private record Pair(UpperHalf upper, LowerHalf lower, boolean listed) {}

    private static List<Pair> some(TrainRater rater, TrainRater plain, int count) {
        int above = rater.brief().train().above().to();
        int below = rater.brief().train().below().to();
        List<LowerHalf> all = LowerHalves.all(new HalfTables(plain), below, () -> false);
        List<LowerHalf> lowers = LowerHalves.all(new HalfTables(rater), below, () -> false);
        if (all.isEmpty()) {
            return List.of();
        }
        List<UpperHalf> allUppers = UpperHalves.all(new HalfTables(plain), above, all, () -> false);
        List<UpperHalf> uppers =
                lowers.isEmpty() ? List.of() : UpperHalves.all(new HalfTables(rater), above, lowers, () -> false);
        Random random = new Random(1);
        List<Pair> pairs = new ArrayList<>();
        while (!allUppers.isEmpty() && pairs.size() < count) {
            UpperHalf upper = allUppers.get(random.nextInt(allUppers.size()));
            LowerHalf lower = all.get(random.nextInt(all.size()));
            boolean listed = uppers.contains(upper) && lowers.contains(lower);
            pairs.add(
                    listed
                            ? new Pair(uppers.get(uppers.indexOf(upper)), lowers.get(lowers.indexOf(lower)), true)
                            : new Pair(upper, lower, false));
        }
        return pairs;
    }

    /** Two modules of which the larger clears drums that the smaller does not. */
    private static List<Brief> briefs(int count, long seed) {
        Random random = new Random(seed);
        return SmallBriefs.some(count, seed).stream()
                .map(brief -> Briefs.with(
                        brief,
                        "/frame/depth = \"" + (LEAST_DEPTH + random.nextInt(DEPTHS)) + " mm\""
                                + " & /frame/width = \"300 mm\" & /frame/height = \"500 mm\""
                                + " & /frame/arrangement = \"upright\" & /parts/hubWall = \"1.2 mm\""
                                + " & /teeth/modules = [\"1 mm\", \"1.75 mm\"] & /weight/limit = \"100 kg\""))
                .toList();
    }
}
