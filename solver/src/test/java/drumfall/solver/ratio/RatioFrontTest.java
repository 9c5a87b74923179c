// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The gear train of E. Sandgren (Journal of Mechanical Design 112 (1990), pages 223-229) with two objectives: the square
 * of 1/6.931 less the ratio, and the largest of the four counts.
 */
class RatioFrontTest {
    private static final BigFraction TARGET = BigFraction.of(1000, 6931);
    private static final CountRange COUNTS = new CountRange(12, 60);
    private static final RatioQuery SANDGREN = new RatioQuery(TARGET, 2, COUNTS, COUNTS, 1, 100);

    // K. Deb, A. Pratap and S. Moitra, "Mechanical component design for multiple objectives using elitist non-dominated
    // sorting GA" (2000), from memory: solutions 12·12/(27·37) with 1.83e-8 and 37 teeth, 12·12/(13·13) with 5.01e-1
    // and 13 teeth; half a unit of the last printed digit.
    @ParameterizedTest
    @CsvSource({"37, 27, 1.83e-8, 0.5e-10", "13, 13, 5.01e-1, 0.5e-3"})
    void a_published_solution_of_both_objectives_is_on_the_front(
            int largest, int other, double objective, double halfUnit) {
        SizedRatio point = RatioFront.search(SANDGREN, () -> false).ratios().stream()
                .filter(sized -> sized.largestCount() == largest)
                .findFirst()
                .orElseThrow();

        assertThat(point.entry().trains()).contains(new RatioTrain(List.of(12, 12), List.of(largest, other)));
        assertThat(point.entry().error().pow(2).doubleValue()).isCloseTo(objective, within(halfUnit));
    }

    /** One point of the oracle: a size, the least error of it in units of 1/6931, and how many ordered trains have it. */
    private record Best(int size, long above, long below, int trains) {
        Best with(long otherAbove, long otherBelow) {
            long order = trains == 0 ? -1 : otherAbove * below - above * otherBelow;
            return order < 0
                    ? new Best(size, otherAbove, otherBelow, 1)
                    : order > 0 ? this : new Best(size, above, below, trains + 1);
        }

        BigFraction distance() {
            return BigFraction.of(above, 6931L * below);
        }
    }

    @Test
    void plain_enumeration_of_all_trains_finds_the_same_front() {
        RatioFront front = RatioFront.search(SANDGREN, () -> false);

        assertThat(front.proven()).isTrue();
        assertThat(front.ratios())
                .extracting(sized -> List.<Object>of(
                        sized.largestCount(), sized.entry().approximation().distance(), arrangements(sized)))
                .containsExactlyElementsOf(plainFront().stream()
                        .map(best -> List.<Object>of(best.size(), best.distance(), (long) best.trains()))
                        .toList());
        assertThat(front.ratios().get(0).entry().ratio()).isEqualTo(BigFraction.of(304, 2107));
    }

    private static long arrangements(SizedRatio sized) {
        return sized.entry().trains().stream()
                .mapToLong(RatioTrain::arrangementCount)
                .sum();
    }

    /** The oracle: all 49⁴ ordered trains by four plain loops in longs, sharing no code with the search. */
    private static List<Best> plainFront() {
        Best[] bests = new Best[61];
        for (int size = 12; size <= 60; size++) {
            bests[size] = new Best(size, 0, 1, 0);
        }
        for (int a = 12; a <= 60; a++) {
            for (int b = 12; b <= 60; b++) {
                for (int c = 12; c <= 60; c++) {
                    for (int d = 12; d <= 60; d++) {
                        int size = Math.max(Math.max(a, b), Math.max(c, d));
                        bests[size] = bests[size].with(Math.abs(1000L * c * d - 6931L * a * b), (long) c * d);
                    }
                }
            }
        }
        List<Best> front = new ArrayList<>();
        for (int size = 12; size <= 60; size++) {
            if (front.isEmpty() || bests[size].distance().compareTo(front.get(0).distance()) < 0) {
                front.add(0, bests[size]);
            }
        }
        return front;
    }

    @Test
    void on_any_front_no_ratio_beats_another_and_the_ends_are_the_extremes() {
        SplittableRandom random = new SplittableRandom(1705);
        int samples = "full".equals(System.getProperty("drumfall.samples")) ? 1_000 : 60;
        for (int sample = 0; sample < samples; sample++) {
            int wheel = random.nextInt(1, 60);
            int leaf = random.nextInt(1, 60);
            RatioQuery query = new RatioQuery(
                    BigFraction.of(random.nextInt(1, 400), random.nextInt(1, 60)),
                    random.nextInt(1, 4),
                    new CountRange(wheel, wheel + random.nextInt(12)),
                    new CountRange(leaf, leaf + random.nextInt(12)),
                    1,
                    random.nextInt(1, 4));

            List<SizedRatio> front = RatioFront.search(query, () -> false).ratios();

            assertThat(front.get(0).entry().approximation().distance())
                    .isEqualTo(RatioSearch.search(query, () -> false)
                            .entries()
                            .get(0)
                            .approximation()
                            .distance());
            for (int at = 1; at < front.size(); at++) {
                SizedRatio nearer = front.get(at - 1);
                assertThat(front.get(at).largestCount()).isLessThan(nearer.largestCount());
                assertThat(nearer.entry()
                                .approximation()
                                .isNearerThan(front.get(at).entry().approximation()))
                        .isTrue();
            }
            assertThat(front)
                    .last()
                    .satisfies(last -> assertThat(last.largestCount()).isEqualTo(smallestSize(query)));
        }
    }

    /** Every query has a train of all least counts, and none is smaller. */
    private static int smallestSize(RatioQuery query) {
        return Math.max(query.wheels().least(), query.leaves().least());
    }

    // 3/2 lies in the middle between 1/1 and 2/1, and 2/1 needs the larger wheel; so 1/1 alone is on the front.
    @Test
    void of_two_ratios_equally_near_only_the_one_of_the_smaller_wheel_is_on_the_front() {
        RatioQuery query = new RatioQuery(BigFraction.of(3, 2), 1, new CountRange(1, 2), new CountRange(1, 1), 1, 1);

        assertThat(RatioFront.search(query, () -> false).ratios())
                .extracting(SizedRatio::largestCount)
                .containsExactly(1);
    }

    // 5/12 lies in the middle between 1/3, which the search lists first, and 1/2, which needs the smaller wheel.
    @Test
    void a_smaller_train_on_the_other_side_of_the_target_takes_the_place_of_a_larger_one() {
        RatioQuery query = new RatioQuery(BigFraction.of(5, 12), 1, new CountRange(1, 1), new CountRange(2, 3), 1, 1);

        assertThat(RatioSearch.search(query, () -> false).entries().get(0).ratio())
                .isEqualTo(BigFraction.of(1, 3));
        assertThat(RatioFront.search(query, () -> false).ratios())
                .extracting(sized -> sized.entry().ratio())
                .containsExactly(BigFraction.of(1, 2));
    }

    @Test
    void a_cut_list_of_trains_says_so() {
        RatioQuery one = new RatioQuery(TARGET, 2, COUNTS, COUNTS, 1, 1);
        RatioQuery many = new RatioQuery(TARGET, 2, COUNTS, COUNTS, 1, 10_000);

        List<SizedRatio> cut = RatioFront.search(one, () -> false).ratios();
        List<SizedRatio> whole = RatioFront.search(many, () -> false).ratios();

        assertThat(whole).allMatch(sized -> sized.entry().allListed());
        for (int at = 0; at < cut.size(); at++) {
            int trains = whole.get(at).entry().trains().size();
            assertThat(cut.get(at).entry().allListed()).isEqualTo(trains == 1);
        }
    }

    @Test
    void a_cancelled_front_claims_no_proof() {
        AtomicInteger asked = new AtomicInteger();

        assertThat(RatioFront.search(SANDGREN, () -> true)).isEqualTo(new RatioFront(List.of(), false));
        RatioFront later = RatioFront.search(SANDGREN, () -> asked.incrementAndGet() > 6);
        assertThat(later.proven()).isFalse();
        assertThat(later.ratios()).isNotEmpty();
    }
}
