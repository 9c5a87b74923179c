// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RatioSearchTest {
    private static final int ALL_TRAINS = 10_000;

    @Test
    void the_search_agrees_with_trying_every_train() {
        SplittableRandom random = new SplittableRandom(1896);
        int samples = "full".equals(System.getProperty("drumfall.samples")) ? 5_000 : 150;
        for (int sample = 0; sample < samples; sample++) {
            RatioQuery query = randomQuery(random);

            RatioOutcome outcome = RatioSearch.search(query, () -> false);

            SortedMap<Approximation, Set<RatioTrain>> expected = tryEveryTrain(query);
            assertThat(outcome.proven()).isTrue();
            assertThat(outcome.entries())
                    .extracting(RatioEntry::approximation)
                    .containsExactlyElementsOf(
                            expected.keySet().stream().limit(query.wanted()).toList());
            assertThat(outcome.entries()).allSatisfy(entry -> {
                assertThat(entry.allListed()).isTrue();
                assertThat(entry.trains()).containsExactlyInAnyOrderElementsOf(expected.get(entry.approximation()));
            });
        }
    }

    private static RatioQuery randomQuery(SplittableRandom random) {
        int meshCount = random.nextInt(1, 5);
        int widest = meshCount == 4 ? 3 : meshCount == 3 ? 5 : 12;
        int leastWheel = random.nextInt(1, 80);
        int leastLeaf = random.nextInt(1, 30);
        CountRange wheels = new CountRange(leastWheel, leastWheel + random.nextInt(widest));
        CountRange leaves = new CountRange(leastLeaf, leastLeaf + random.nextInt(widest));
        BigFraction typical = BigFraction.of(leastWheel, leastLeaf).pow(meshCount);
        BigFraction target = random.nextBoolean()
                ? typical.multiply(BigFraction.of(random.nextInt(1, 2000), 1000))
                : BigFraction.of(random.nextInt(1, 400), random.nextInt(1, 30));
        return new RatioQuery(target, meshCount, wheels, leaves, random.nextInt(1, 8), ALL_TRAINS);
    }

    /** The oracle: every ordered train, each ratio multiplied out and sorted, with no skipping. */
    private static SortedMap<Approximation, Set<RatioTrain>> tryEveryTrain(RatioQuery query) {
        SortedMap<Approximation, Set<RatioTrain>> found = new TreeMap<>(Approximation.NEAREST_FIRST);
        for (List<Integer> wheels : everyList(query.wheels(), query.meshCount())) {
            for (List<Integer> leaves : everyList(query.leaves(), query.meshCount())) {
                RatioTrain train = new RatioTrain(wheels, leaves);
                Approximation approximation = Approximation.of(train.ratio(), query.target());
                found.computeIfAbsent(approximation, absent -> new LinkedHashSet<>())
                        .add(train);
            }
        }
        return found;
    }

    /** Every ordered list, so that reorderings fall together only because the trains are equal. */
    private static List<List<Integer>> everyList(CountRange range, int length) {
        List<List<Integer>> lists = List.of(List.of());
        for (int place = 0; place < length; place++) {
            lists = lists.stream()
                    .flatMap(list -> IntStream.rangeClosed(range.least(), range.most())
                            .mapToObj(count -> {
                                List<Integer> longer = new ArrayList<>(list);
                                longer.add(count);
                                return longer;
                            }))
                    .map(List::copyOf)
                    .toList();
        }
        return lists;
    }

    @Test
    void a_long_decimal_is_compared_exactly() {
        // Two targets a billionth of a billionth of a billionth of a billionth apart, on both sides of the middle of 1
        // and 2.
        BigFraction middle = BigFraction.of(3, 2);
        BigFraction hair = BigFraction.of(1).divide(BigFraction.of(BigInteger.TEN.pow(36)));
        CountRange oneOrTwo = new CountRange(1, 2);
        CountRange one = new CountRange(1, 1);

        assertThat(nearest(middle.subtract(hair), oneOrTwo, one)).isEqualTo(BigFraction.ONE);
        assertThat(nearest(middle.add(hair), oneOrTwo, one)).isEqualTo(BigFraction.of(2));
        assertThat(nearest(middle, oneOrTwo, one)).isEqualTo(BigFraction.ONE);
    }

    private static BigFraction nearest(BigFraction target, CountRange wheels, CountRange leaves) {
        RatioQuery query = new RatioQuery(target, 1, wheels, leaves, 1, 1);
        return RatioSearch.search(query, () -> false).entries().get(0).ratio();
    }

    @Test
    void of_two_ratios_equally_near_the_smaller_comes_first() {
        RatioQuery query = new RatioQuery(BigFraction.of(3, 2), 1, new CountRange(1, 2), new CountRange(1, 1), 5, 1);

        assertThat(RatioSearch.search(query, () -> false).entries())
                .extracting(RatioEntry::ratio)
                .containsExactly(BigFraction.ONE, BigFraction.of(2));
    }

    @Test
    void reorderings_of_a_train_are_listed_once_with_the_most_teeth_first() {
        RatioQuery query =
                new RatioQuery(BigFraction.of(60), 2, new CountRange(60, 64), new CountRange(8, 8), 1, ALL_TRAINS);

        RatioEntry exact = RatioSearch.search(query, () -> false).entries().get(0);

        assertThat(exact.trains()).containsExactly(new RatioTrain(List.of(64, 60), List.of(8, 8)));
        assertThat(exact.trains().get(0).toothCounts()).containsExactly(64, 60);
        assertThat(exact.trains().get(0).arrangementCount()).isEqualTo(2);
    }

    @Test
    void a_list_of_trains_that_was_cut_says_so() {
        CountRange wheels = new CountRange(30, 100);
        CountRange leaves = new CountRange(6, 12);
        RatioQuery whole = new RatioQuery(BigFraction.of(60), 2, wheels, leaves, 1, ALL_TRAINS);
        RatioEntry all = RatioSearch.search(whole, () -> false).entries().get(0);
        RatioQuery exactlyEnough = new RatioQuery(
                BigFraction.of(60), 2, wheels, leaves, 1, all.trains().size());
        RatioQuery oneShort = new RatioQuery(
                BigFraction.of(60), 2, wheels, leaves, 1, all.trains().size() - 1);

        RatioEntry enough =
                RatioSearch.search(exactlyEnough, () -> false).entries().get(0);
        RatioEntry cut = RatioSearch.search(oneShort, () -> false).entries().get(0);

        assertThat(enough).isEqualTo(all);
        assertThat(enough.allListed()).isTrue();
        assertThat(cut.allListed()).isFalse();
        assertThat(cut.trains()).isEqualTo(all.trains().subList(0, all.trains().size() - 1));
    }

    @Test
    void four_meshes_over_the_whole_range_of_the_trade_end_with_a_proof() {
        RatioQuery query = new RatioQuery(
                BigFraction.from(29.530589 * 24), 4, new CountRange(20, 70), new CountRange(6, 16), 5, 10);

        RatioOutcome outcome = RatioSearch.search(query, () -> false);

        assertThat(outcome.proven()).isTrue();
        assertThat(outcome.entries())
                .hasSize(5)
                .allSatisfy(entry -> assertThat(entry.trains())
                        .isNotEmpty()
                        .allSatisfy(train -> assertThat(train.ratio()).isEqualTo(entry.ratio())));
    }

    @Test
    void a_cancelled_search_claims_no_proof() {
        RatioQuery query =
                new RatioQuery(BigFraction.of(60), 2, new CountRange(20, 200), new CountRange(6, 100), 3, ALL_TRAINS);
        AtomicInteger asked = new AtomicInteger();

        RatioOutcome atOnce = RatioSearch.search(query, () -> true);
        RatioOutcome later = RatioSearch.search(query, () -> asked.incrementAndGet() > 2);

        assertThat(atOnce.proven()).isFalse();
        assertThat(atOnce.entries()).isEmpty();
        assertThat(later.proven()).isFalse();
        assertThat(later.entries()).hasSize(3).noneMatch(RatioEntry::allListed);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            0;   2; 20; 60;     6; 12; 1;     1;     The target ratio (0) must be positive. Maybe give driver turns over driven turns.
            -1;  2; 20; 60;     6; 12; 1;     1;     The target ratio (-1) must be positive. Maybe give driver turns over driven turns.
            12;  0; 20; 60;     6; 12; 1;     1;     The meshCount (0) must lie from 1 to 4. Maybe split the train.
            12;  5; 20; 60;     6; 12; 1;     1;     The meshCount (5) must lie from 1 to 4. Maybe split the train.
            12;  2; 60; 20;     6; 12; 1;     1;     The most count (20) must be at least the least count (60). Maybe swap the two bounds.
            12;  2; 20; 60;     0; 12; 1;     1;     The least count (0) must be at least 1. Maybe give the smallest printable pinion.
            12;  2; 20; 60;     6; 12; 0;     1;     The number of wanted ratios (0) must lie from 1 to 10000. Maybe ask for the best few.
            12;  2; 20; 60;     6; 12; 10001; 1;     The number of wanted ratios (10001) must lie from 1 to 10000. Maybe ask for the best few.
            12;  2; 20; 60;     6; 12; 1;     0;     The number of trains per ratio (0) must lie from 1 to 10000. Maybe ask for the first few.
            12;  4; 70000; 70001; 6; 12; 1;   1;     The wheel range (70000 to 70001) must keep the product of 4 counts below 2^63. Maybe lower the most.
            12;  4; 20; 500;    6; 12; 1;     1;     The wheel range (20 to 500) must leave at most 15000000 choices of 4 counts. Maybe narrow the range.
            12;  3; 20; 60;     6; 600; 1;    1;     The leaf range (6 to 600) must leave at most 15000000 choices of 3 counts. Maybe narrow the range.
            """)
    void a_query_that_cannot_be_searched_is_refused(
            int target,
            int meshCount,
            int leastWheel,
            int mostWheel,
            int leastLeaf,
            int mostLeaf,
            int wanted,
            int trainsPerRatio,
            String message) {
        assertThatThrownBy(() -> new RatioQuery(
                        BigFraction.of(target),
                        meshCount,
                        new CountRange(leastWheel, mostWheel),
                        new CountRange(leastLeaf, mostLeaf),
                        wanted,
                        trainsPerRatio))
                .isInstanceOf(RatioException.class)
                .hasMessage(message);
    }

    @Test
    void a_target_of_too_many_digits_is_refused() {
        BigFraction endless = BigFraction.of(BigInteger.TEN.pow(10_000).add(BigInteger.ONE), BigInteger.TWO);

        assertThatThrownBy(() -> new RatioQuery(endless, 1, new CountRange(1, 2), new CountRange(1, 2), 1, 1))
                .isInstanceOf(RatioException.class)
                .hasMessageStartingWith("The target ratio (33220 bits) must fit 512 bits");
    }

    @Test
    void products_close_to_the_largest_long_are_still_exact() {
        CountRange wheels = new CountRange(55_100, 55_104);
        CountRange leaves = new CountRange(55_101, 55_103);
        RatioQuery query = new RatioQuery(BigFraction.ONE, 4, wheels, leaves, 4, ALL_TRAINS);

        RatioOutcome outcome = RatioSearch.search(query, () -> false);

        assertThat(outcome.entries())
                .extracting(RatioEntry::approximation)
                .containsExactlyElementsOf(
                        tryEveryTrain(query).keySet().stream().limit(4).toList());
    }
}
