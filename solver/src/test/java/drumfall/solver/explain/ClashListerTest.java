// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Demand;
import drumfall.solver.rating.Rating;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.SmallBriefs;
import drumfall.solver.search.HeldDemand;
import drumfall.solver.search.PlainLoops;
import drumfall.solver.search.SearchListener;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Minimal clashes against every set of demands. Plain loops rate every train; a set clashes if each train misses one of its
 * demands, and is minimal if none of its parts does.
 */
class ClashListerTest {
    private static final int BRIEFS = "full".equals(System.getProperty("drumfall.samples")) ? 100 : 5;
    private static final int MOST = 12;

    /** What was listed for briefs that several tests look at. */
    private static final Map<Brief, Clashes> LISTED = new ConcurrentHashMap<>();

    /** Choices of the brief and laws of the trade: a train that misses one of these is none. */
    private static final Set<Demand> NEVER_DROPPED = EnumSet.of(Demand.ARC, Demand.STEPS_UP);

    /** Small briefs of consecutive seeds that no train meets. */
    static Stream<Brief> withoutTrains(int count, long seed) {
        return SmallBriefs.fewer(12 * count, seed).stream()
                .filter(PlainLoops::none)
                .limit(count);
    }

    @TestFactory
    Stream<DynamicTest> the_list_holds_every_minimal_set_of_demands_that_clash() {
        return withoutTrains(BRIEFS, 1)
                .map(brief -> DynamicTest.dynamicTest(
                        brief.run() + " " + brief.weight().limit() + " " + brief.locks(),
                        () -> sameAsBySubsets(brief)));
    }

    /** Small briefs with several demands made too strict at once, so that there is more than one way to clash. */
    private static Stream<Brief> tooStrict(int count) {
        return IntStream.range(0, count).mapToObj(seed -> {
            Random random = new Random(seed);
            List<String> edits = new ArrayList<>(List.of(
                    "/weight/limit = \"%d kg\"".formatted(2 + random.nextInt(20)),
                    "/line/ratedLoad = \"%d N\"".formatted(100 + random.nextInt(3000)),
                    "/material/allowable = \"%d MPa\"".formatted(1 + random.nextInt(40)),
                    "/frame/width = \"%d mm\"".formatted(50 + random.nextInt(50)),
                    "/parts/gap = \"%d mm\"".formatted(2 + random.nextInt(4)),
                    "/drum/length = \"%d mm\"".formatted(10 + random.nextInt(20)),
                    "/printer/bedWidth = \"%d mm\"".formatted(35 + random.nextInt(40))));
            Collections.shuffle(edits, random);
            Brief brief = SmallBriefs.fewer(1, 7 * seed + 1).get(0);
            return Briefs.with(brief, String.join(" & ", edits.subList(0, 3 + random.nextInt(3))));
        });
    }

    @TestFactory
    Stream<DynamicTest> the_list_holds_every_minimal_set_where_there_are_several() {
        return tooStrict(2 * BRIEFS)
                .map(brief -> DynamicTest.dynamicTest(
                        brief.weight().limit() + " " + brief.frame().width(), () -> sameAsBySubsets(brief)));
    }

    @Test
    void the_sample_holds_briefs_with_several_clashes() {
        List<Integer> sizes =
                tooStrict(12).map(brief -> listed(brief).list().size()).toList();
        assertThat(sizes).filteredOn(size -> size > 1).hasSizeGreaterThan(3);
        assertThat(sizes).filteredOn(size -> size > 2).isNotEmpty();
    }

    private static Clashes listed(Brief brief) {
        return LISTED.computeIfAbsent(brief, asked -> ClashLister.of(asked, MOST, SearchListener.SILENT, () -> false));
    }

    private static void sameAsBySubsets(Brief brief) {
        List<HeldDemand> demands = HeldDemand.of(brief);
        Set<Long> missed = missed(brief, demands);
        Set<Long> expected = minimal(demands.size(), missed);

        Clashes clashes = listed(brief);
        List<Long> found = clashes.list().stream()
                .map(clash -> bits(clash.demands(), demands))
                .toList();

        assertThat(clashes.list()).allMatch(MinimalClash::minimal);
        assertThat(found).doesNotHaveDuplicates().isSubsetOf(expected);
        assertThat(found).hasSize(Math.min(MOST, expected.size()));
        assertThat(clashes.complete()).isEqualTo(expected.size() <= MOST);
        assertThat(found.stream().map(Long::bitCount)).isSorted();
        for (long clash : found) {
            assertThat(missed).allMatch(set -> (set & clash) != 0);
            assertThat(IntStream.range(0, demands.size()).filter(i -> (clash >> i & 1) == 1))
                    .allMatch(i -> missed.stream().anyMatch(set -> (set & clash & ~(1L << i)) == 0));
        }
    }

    /** What each train misses, as bits; trains without a weight are none. */
    private static Set<Long> missed(Brief brief, List<HeldDemand> demands) {
        Set<Long> missed = new HashSet<>();
        for (Rating rating : PlainLoops.all(brief)) {
            if (rating.missed().noneMatch(figure -> NEVER_DROPPED.contains(figure.demand()))
                    && Double.isFinite(rating.recommendedWeight())) {
                missed.add(IntStream.range(0, demands.size())
                        .filter(i -> !demands.get(i).metBy(rating))
                        .mapToLong(i -> 1L << i)
                        .sum());
            }
        }
        return missed;
    }

    private static Set<Long> minimal(int demands, Set<Long> missed) {
        List<Long> clashing = new ArrayList<>();
        for (long set = 0; set < 1L << demands; set++) {
            long held = set;
            if (missed.stream().allMatch(miss -> (miss & held) != 0)
                    && clashing.stream().noneMatch(smaller -> (smaller & ~held) == 0)) {
                clashing.add(set);
            }
        }
        return clashing.stream()
                .filter(set -> clashing.stream().noneMatch(other -> !other.equals(set) && (other & ~set) == 0))
                .collect(Collectors.toSet());
    }

    private static long bits(List<HeldDemand> some, List<HeldDemand> demands) {
        return some.stream().mapToLong(held -> 1L << demands.indexOf(held)).sum();
    }

    @Test
    void a_brief_with_trains_has_no_clash() {
        Brief brief = SmallBriefs.fewer(20, 1).stream()
                .filter(candidate -> !PlainLoops.none(candidate))
                .findFirst()
                .orElseThrow();

        assertThat(ClashLister.of(brief, 6, SearchListener.SILENT, () -> false).none())
                .isTrue();
    }

    @Test
    void a_list_that_is_full_does_not_say_that_it_is_complete() {
        Brief brief = tooStrict(12)
                .filter(candidate -> listed(candidate).list().size() > 1)
                .findFirst()
                .orElseThrow();

        Clashes one = ClashLister.of(brief, 1, SearchListener.SILENT, () -> false);

        assertThat(one.list()).hasSize(1);
        assertThat(one.complete()).isFalse();
    }

    @Test
    void clashes_are_told_as_they_are_found_and_none_that_was_told_is_taken_back() {
        Brief brief = tooStrict(12)
                .filter(candidate -> listed(candidate).list().size() > 1)
                .findFirst()
                .orElseThrow();
        List<Clashes> told = new ArrayList<>();

        Clashes all = ClashLister.of(brief, MOST, told::add, SearchListener.SILENT, () -> false);

        assertThat(told).hasSameSizeAs(all.list()).noneMatch(Clashes::complete);
        for (int i = 0; i < told.size(); i++) {
            assertThat(told.get(i).list()).hasSize(i + 1).isSubsetOf(all.list());
        }
    }

    @Test
    void a_list_that_is_cut_short_says_so() {
        Brief brief = withoutTrains(1, 1).findFirst().orElseThrow();

        Clashes clashes = ClashLister.of(brief, 6, SearchListener.SILENT, () -> true);

        assertThat(clashes.complete()).isFalse();
        assertThat(clashes.none()).isFalse();
    }

    @Test
    void choices_that_allow_no_train_clash_with_nothing() {
        // Every pinion has more leaves than any wheel has teeth.
        Brief brief = Briefs.demoWith(
                "/teeth/wheelTeeth = {\"from\": 6, \"to\": 8} & /teeth/leaves = {\"from\": 10, \"to\": 12}");

        Clashes clashes = ClashLister.of(brief, 6, SearchListener.SILENT, () -> false);

        assertThat(clashes.complete()).isTrue();
        assertThat(clashes.list()).containsExactly(new MinimalClash(List.of(), true));
    }

    @Test
    void a_number_of_clashes_out_of_range_is_refused() {
        assertThatThrownBy(() -> ClashLister.of(Briefs.demoWith(""), 0, SearchListener.SILENT, () -> false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The number of clashes (0) must be from 1 to 12. Maybe ask for 6.");
    }
}
