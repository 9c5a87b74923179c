// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import static drumfall.solver.halves.UpperLines.BINDING;
import static drumfall.solver.halves.UpperLines.RUNNING;
import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.rating.CellFront;
import drumfall.solver.rating.Rating;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is left out because no train with it can change the front, against the trains themselves. */
class ProspectsTest {
    private static final int JOINS = "full".equals(System.getProperty("drumfall.samples")) ? 1_000 : 100;
    private static final int PARTNERS = 5;
    private static final int PAIRED = 25;

    @Test
    void no_upper_half_is_better_than_the_best_of_every_group() {
        int compared = 0;
        for (Halves halves : Halves.all()) {
            List<UpperBest> best = new HalfTables(halves.rater()).uppers(longestMemory(halves), () -> false);
            Random random = new Random(1);
            for (int i = 0; i < JOINS; i++) {
                UpperHalf half = halves.anyUpper(random);
                assertThat(best).anyMatch(group -> covers(group, half));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(500);
    }

    /** Weight lines at the longest memory; sums of parts in other orders differ by rounding. */
    private static boolean covers(UpperBest group, UpperHalf half) {
        double slack = 1 - 1e-9;
        return group.meshes() == half.meshes.size()
                && group.line().running() * slack <= half.lines[RUNNING]
                && group.line().runningSlope() * slack <= half.lines[RUNNING + 1]
                && group.line().binding() * slack <= half.lines[BINDING]
                && group.line().bindingSlope() * slack <= half.lines[BINDING + 1]
                && group.sums().filament() <= half.sums.filament()
                && group.sums().largestTip() <= half.sums.largestTip()
                && group.sums().centreDistances() <= half.sums.centreDistances()
                && (group.sums().moduleBits() & ~half.sums.moduleBits()) == 0;
    }

    @Test
    void a_lower_half_without_prospects_makes_no_train_that_changes_the_front() {
        int hopeless = 0;
        for (Halves halves : Halves.all()) {
            Random random = new Random(2);
            CellFront found = someFront(halves, random);
            HalfTables tables = new HalfTables(halves.rater());
            LowerProspects prospects = new LowerProspects(
                    tables.rules, found, tables.uppers(longestMemory(halves), () -> false), halves.below());
            Predicate<LowerHalf> without = half -> prospects.hopeless(half.runningLoad, half.bindingLoad, half.sums);
            for (int i = 0; i < JOINS; i++) {
                LowerHalf half = halves.anyLower(random);
                if (without.test(half)) {
                    hopeless++;
                    for (int j = 0; j < PARTNERS; j++) {
                        assertNothingNew(halves, halves.anyUpper(random), half, found);
                    }
                }
            }
        }
        assertThat(hopeless).isGreaterThan(50);
    }

    @Test
    void an_upper_half_without_prospects_makes_no_train_that_changes_the_front() {
        int hopeless = 0;
        for (Halves halves : Halves.all()) {
            Random random = new Random(3);
            CellFront found = someFront(halves, random);
            HalfTables tables = new HalfTables(halves.rater());
            int count = halves.uppers().get(0).meshes().size();
            UpperProspects prospects = new UpperProspects(tables.rules, found, count, halves.lowers());
            for (int i = 0; i < JOINS; i++) {
                UpperHalf half = halves.anyUpper(random);
                if (prospects.hopeless(figures(half))) {
                    hopeless++;
                    for (int j = 0; j < PARTNERS; j++) {
                        assertNothingNew(halves, half, halves.anyLower(random), found);
                    }
                }
            }
        }
        assertThat(hopeless).isGreaterThan(50);
    }

    // With every train found already, only halves of the front's own trains and their equals have prospects left.
    @Test
    void halves_of_trains_that_may_still_stand_for_a_cell_have_prospects() {
        for (Halves halves : Halves.all()) {
            HalfJoin join = new HalfJoin(halves.rater());
            Random random = new Random(4);
            CellFront found = new CellFront(halves.rater().objectives().asked());
            HalfTables tables = new HalfTables(halves.rater());
            for (int i = 0; i < JOINS; i++) {
                UpperHalf upper = halves.anyUpper(random);
                LowerHalf lower = halves.anyLower(random);
                Rating rating = halves.rater().rate(join.train(upper, lower));
                LowerProspects below = new LowerProspects(
                        tables.rules, found, tables.uppers(longestMemory(halves), () -> false), halves.below());
                UpperProspects above =
                        new UpperProspects(tables.rules, found, upper.meshes().size(), halves.lowers());
                boolean left = !below.hopeless(lower.runningLoad, lower.bindingLoad, lower.sums)
                        && !above.hopeless(figures(upper));
                if (rating.feasible() && found.add(rating)) {
                    assertThat(left).isTrue();
                }
            }
        }
    }

    @Test
    void halves_of_every_pair_that_changes_the_front_are_wanted_and_others_are_not() {
        int wanted = 0;
        int dropped = 0;
        for (Halves halves : Halves.all()) {
            Random random = new Random(5);
            CellFront found = someFront(halves, random);
            List<UpperHalf> uppers = Stream.generate(() -> halves.anyUpper(random))
                    .limit(PAIRED)
                    .distinct()
                    .toList();
            List<LowerHalf> lowers = Stream.generate(() -> halves.anyLower(random))
                    .limit(PAIRED)
                    .distinct()
                    .toList();
            WantedPairs pairs = WantedPairs.of(halves.rater(), uppers, lowers, found, () -> false);
            for (UpperHalf upper : uppers) {
                for (LowerHalf lower : lowers) {
                    if (changes(halves, upper, lower, found)) {
                        assertThat(pairs.uppers()).contains(upper);
                        assertThat(pairs.lowers()).contains(lower);
                        wanted++;
                    }
                }
            }
            assertThat(pairs.uppers())
                    .isEqualTo(uppers.stream().filter(pairs.uppers()::contains).toList());
            assertThat(pairs.lowers())
                    .isEqualTo(lowers.stream().filter(pairs.lowers()::contains).toList());
            dropped += uppers.size() - pairs.uppers().size();
        }
        assertThat(wanted).isGreaterThan(20);
        assertThat(dropped).isGreaterThan(20);
    }

    private static boolean changes(Halves halves, UpperHalf upper, LowerHalf lower, CellFront found) {
        Rating rating = halves.rater().rate(new HalfJoin(halves.rater()).train(upper, lower));
        if (!rating.feasible()) {
            return false;
        }
        CellFront with = new CellFront(halves.rater().objectives().asked());
        found.ratings().forEach(with::add);
        return with.add(rating);
    }

    private static void assertNothingNew(Halves halves, UpperHalf upper, LowerHalf lower, CellFront found) {
        Rating rating = halves.rater().rate(new HalfJoin(halves.rater()).train(upper, lower));
        if (rating.feasible()) {
            List<Rating> before = found.ratings();
            assertThat(found.add(rating)).isFalse();
            assertThat(found.ratings()).isEqualTo(before);
        }
    }

    private static CellFront someFront(Halves halves, Random random) {
        HalfJoin join = new HalfJoin(halves.rater());
        CellFront found = new CellFront(halves.rater().objectives().asked());
        for (int i = 0; i < JOINS; i++) {
            Rating rating = halves.rater().rate(join.train(halves.anyUpper(random), halves.anyLower(random)));
            if (rating.feasible()) {
                found.add(rating);
            }
        }
        return found;
    }

    private static UpperFigures figures(UpperHalf half) {
        return new UpperFigures(half.lines, 0, half.borne, half.centrePull, 0, half.durationError, half.sums);
    }

    private static double longestMemory(Halves halves) {
        return halves.lowers().stream()
                .mapToDouble(half -> half.need.memory())
                .max()
                .orElseThrow();
    }
}
