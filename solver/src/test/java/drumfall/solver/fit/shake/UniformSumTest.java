// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import static drumfall.solver.fit.shake.Stacks.exact;
import static drumfall.solver.fit.shake.Stacks.ofErrors;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UniformSumTest {
    private static final double ROUNDING = 1e-15;

    // Sum of n uniform variables on 0 to 1 below s (Feller, vol. II, ch. I.9: cardinal B-splines): s^n/n! up to
    // 1, one half in the middle, and worked by hand between.
    @ParameterizedTest
    @CsvSource({
        "1, 0.25, 0.25",
        "2, 0.5, 0.125",
        "2, 1.5, 0.875",
        "3, 1, 0.16666666666666666",
        "3, 1.5, 0.5",
        "3, 2, 0.8333333333333334",
        "4, 1, 0.041666666666666664",
        "10, 1, 2.755731922398589e-7",
        "10, 5, 0.5",
        "20, 1, 4.110317623312165e-19",
        "20, 10, 0.5",
    })
    void equal_errors_have_the_published_distribution(int n, double sum, double chance) {
        long[] halves = new long[n];
        Arrays.fill(halves, 500_000);
        double deviation = (sum - n / 2.0) * 1_000_000;

        assertThat(exact(ofErrors(ErrorShape.UNIFORM, halves)).chanceBelow(deviation))
                .isCloseTo(chance, within(Math.max(1e-33, chance * 1e-14))); // the last digits of a double
    }

    // JCGM 101:2008, 9.2.3, four rectangular inputs of standard deviation 1: the shortest 95 % interval is ±
    // 2√3 (2 − (3/5)^(1/4)), printed ± 3.88, from memory; the closed form was checked by hand on the last piece
    // of the polynomial.
    @Test
    void four_uniform_errors_stay_in_the_interval_of_the_guide_in_ninety_five_of_a_hundred() {
        double half = 1_000_000;
        double bound = 2 * half * (2 - Math.pow(0.6, 0.25));
        UniformSum sum = exact(ofErrors(ErrorShape.UNIFORM, 1_000_000, 1_000_000, 1_000_000, 1_000_000));

        assertThat(sum.chanceBelow(-bound) + sum.chanceAbove(bound))
                .isCloseTo(0.05, within(1e-14)); // rounding of bound
        assertThat(bound / half * Math.sqrt(3)).isCloseTo(3.88, within(0.005)); // half of the last place printed
    }

    // JCGM 101:2008, 9.2.4, from memory: three of deviation 1 and one of 10: 95 % lie within ± 17.0 by its
    // Monte Carlo.
    @Test
    void one_error_far_larger_than_the_rest_spoils_the_normal_rule_as_in_the_guide() {
        double unit = Math.sqrt(3) * 1_000_000;
        UniformSum sum = exact(ofErrors(
                ErrorShape.UNIFORM, Math.round(10 * unit), Math.round(unit), Math.round(unit), Math.round(unit)));

        // The guide prints one decimal: the exact bound lies between 16.95 and 17.05.
        assertThat(2 * sum.chanceAbove(16.95e6)).isGreaterThan(0.05);
        assertThat(2 * sum.chanceAbove(17.05e6)).isLessThan(0.05);
    }

    @Test
    void two_unequal_errors_make_a_trapezium() {
        UniformSum sum = exact(ofErrors(ErrorShape.UNIFORM, 300_000, 100_000));

        assertThat(sum.chanceBelow(-400_000)).isZero();
        assertThat(sum.chanceBelow(-200_000)).isCloseTo(1.0 / 6, within(ROUNDING)); // corner: 0.2²/(2·0.6·0.2)
        assertThat(sum.chanceBelow(-300_000)).isCloseTo(1.0 / 24, within(ROUNDING));
        assertThat(sum.chanceBelow(0)).isEqualTo(0.5);
        assertThat(sum.chanceBelow(400_000)).isEqualTo(1);
    }

    @Test
    void a_triangular_error_is_two_uniform_ones_of_half_its_width() {
        UniformSum triangle = exact(ofErrors(ErrorShape.TRIANGULAR, 300_001));

        // Area of the corner of a triangle, by hand: d²/(2h²) with d from the lower end.
        assertThat(triangle.chanceBelow(-200_000)).isCloseTo(Math.pow(100_001.0 / 300_001, 2) / 2, within(ROUNDING));
        assertThat(triangle.chanceBelow(0)).isEqualTo(0.5);
    }

    // One error more averages the distribution over its width; the average is taken by Simpson's rule over 2000
    // strips. Pieces of the polynomial join smoothly enough for an error far below 1e-6.
    @Test
    void one_more_error_averages_the_distribution_over_its_width() {
        SplittableRandom random = new SplittableRandom(21);
        for (int i = 0; i < 20; i++) {
            long[] fewer = random.longs(3, 10_000, 500_000).toArray();
            long[] more = Arrays.copyOf(fewer, 4);
            more[3] = random.nextLong(10_000, 500_000);
            double at = random.nextDouble(-500_000, 500_000);

            assertThat(exact(ofErrors(ErrorShape.UNIFORM, more)).chanceBelow(at))
                    .isCloseTo(average(exact(ofErrors(ErrorShape.UNIFORM, fewer)), at, more[3]), within(1e-6));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 9, 12})
    void chances_rise_from_nought_to_one_and_mirror_about_the_mean(int errors) {
        long[] halves = new SplittableRandom(errors).longs(errors, 1, 400_000).toArray();
        UniformSum sum = exact(ofErrors(ErrorShape.UNIFORM, halves));
        double last = 0;
        for (int step = -50; step <= 50; step++) {
            double deviation = step / 50.0 * Arrays.stream(halves).sum();
            double chance = sum.chanceBelow(deviation);

            assertThat(chance).isBetween(last, 1.0);
            assertThat(chance + sum.chanceBelow(-deviation)).isCloseTo(1, within(ROUNDING));
            last = chance;
        }
        assertThat(last).isEqualTo(1);
    }

    @Test
    void parts_without_error_stay_where_they_are() {
        UniformSum still = exact(ofErrors(ErrorShape.UNIFORM, 0, 0));

        assertThat(still.chanceBelow(-1)).isZero();
        assertThat(still.chanceBelow(0)).isZero();
        assertThat(still.chanceBelow(1)).isEqualTo(1);
        assertThat(still.missing(0, new ShakeBand(0, 1)).outside()).isZero();
    }

    @Test
    void normal_errors_and_too_many_terms_have_no_exact_answer() {
        long[] halves = new long[20];
        Arrays.setAll(halves, i -> 1000 + i);

        assertThat(UniformSum.of(ofErrors(ErrorShape.TRUNCATED_NORMAL, 1, 2))).isEmpty();
        assertThat(UniformSum.of(ofErrors(ErrorShape.UNIFORM, halves))).isEmpty();
    }

    private static double average(UniformSum sum, double at, long half) {
        int strips = 2000;
        double total = 0;
        for (int i = 0; i <= strips; i++) {
            double weight = i == 0 || i == strips ? 1 : i % 2 == 1 ? 4 : 2;
            total += weight * sum.chanceBelow(at - half + 2.0 * half * i / strips);
        }
        return total / (3.0 * strips);
    }
}
