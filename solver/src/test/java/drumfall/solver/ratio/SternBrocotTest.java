// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SternBrocotTest {
    // A. Brocot, 1861, as told by B. Hayes, "On the Teeth of Wheels", American Scientist, July 2000 (the ratio from
    // memory):
    // 191/23. The mediants and their errors follow from the rule; four decimals, hence the half unit.
    @Test
    void brocots_example_is_reached_by_his_mediants() {
        List<Approximation> path = SternBrocot.path(BigFraction.of(191, 23), 23);

        assertThat(path)
                .extracting(step -> step.ratio().toString().replace(" ", ""))
                .containsExactly("17/2", "25/3", "33/4", "58/7", "83/10", "108/13", "191/23");
        double[] errors = {0.1957, 0.0290, -0.0543, -0.0186, -0.0043, 0.0033, 0};
        for (int step = 0; step < errors.length; step++) {
            assertThat(path.get(step).error().doubleValue()).isCloseTo(errors[step], within(0.00005));
        }
    }

    // OEIS A063674 over A063673, from memory: fractions nearer to π than all of smaller denominator.
    @Test
    void the_best_fractions_for_pi_are_the_published_ones() {
        BigFraction pi = BigFraction.from(Math.PI);

        assertThat(SternBrocot.bestUpTo(pi, 113))
                .extracting(step -> step.ratio().toString().replace(" ", ""))
                .containsExactly(
                        "3", "13/4", "16/5", "19/6", "22/7", "179/57", "201/64", "223/71", "245/78", "267/85", "289/92",
                        "311/99", "333/106", "355/113");
        assertThat(SternBrocot.nearest(Math.PI, 16_603).ratio()).isEqualTo(BigFraction.of(355, 113));
        assertThat(SternBrocot.nearest(Math.PI, 16_604).ratio()).isEqualTo(BigFraction.of(52_163, 16_604));
    }

    @Test
    void no_fraction_of_smaller_or_equal_denominator_is_nearer() {
        SplittableRandom random = new SplittableRandom(1858);
        int samples = "full".equals(System.getProperty("drumfall.samples")) ? 20_000 : 300;
        for (int sample = 0; sample < samples; sample++) {
            BigFraction target = BigFraction.of(random.nextLong(1, 1_000_000), random.nextLong(1, 100_000));
            int bound = random.nextInt(1, 60);

            Approximation nearest = SternBrocot.nearest(target, bound);

            assertThat(nearest).isEqualTo(nearestByTrial(target, bound));
            List<Approximation> records = SternBrocot.bestUpTo(target, bound);
            assertThat(records).last().isEqualTo(nearest);
            assertThat(records)
                    .allSatisfy(record -> assertThat(record)
                            .isEqualTo(nearestByTrial(
                                    target, record.ratio().getDenominator().intValueExact())));
        }
    }

    /** The oracle: for every denominator the two numerators around the target. */
    private static Approximation nearestByTrial(BigFraction target, int bound) {
        Approximation nearest = Approximation.of(BigFraction.ZERO, target);
        for (int denominator = 1; denominator <= bound; denominator++) {
            long below = (long) Math.floor(target.multiply(denominator).doubleValue());
            for (long numerator = Math.max(0, below - 1); numerator <= below + 1; numerator++) {
                Approximation candidate = Approximation.of(BigFraction.of(numerator, denominator), target);
                nearest = candidate.isNearerThan(nearest) ? candidate : nearest;
            }
        }
        return nearest;
    }

    @Test
    void a_target_within_the_bound_is_its_own_best_fraction() {
        assertThat(SternBrocot.nearest(BigFraction.of(12), 1).error().isZero()).isTrue();
        assertThat(SternBrocot.path(BigFraction.of(12), 100)).isEmpty();
        assertThat(SternBrocot.bestUpTo(BigFraction.of(12), 100)).hasSize(1);
    }

    @Test
    void of_two_whole_numbers_equally_near_the_smaller_is_taken() {
        assertThat(SternBrocot.nearest(BigFraction.of(5, 2), 1).ratio()).isEqualTo(BigFraction.of(2));
    }

    @Test
    void a_huge_bound_is_as_quick_as_a_small_one() {
        // Neighbouring Fibonacci numbers are the slowest case of the continued fraction.
        BigFraction golden = BigFraction.of(7_540_113_804_746_346_429L, 4_660_046_610_375_530_309L);

        assertThat(SternBrocot.nearest(golden, 4_660_046_610_375_530_308L).ratio())
                .isEqualTo(BigFraction.of(4_660_046_610_375_530_309L, 2_880_067_194_370_816_120L));
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "-3, 10"})
    void a_target_that_is_not_positive_is_refused(int target, int bound) {
        assertThatThrownBy(() -> SternBrocot.path(BigFraction.of(target), bound))
                .isInstanceOf(RatioException.class)
                .hasMessage(
                        "The target ratio (%d) must be positive. Maybe give driver turns over driven turns.", target);
    }

    @ParameterizedTest
    @CsvSource({"0", "100001"})
    void a_bound_out_of_range_is_refused(int bound) {
        assertThatThrownBy(() -> SternBrocot.path(BigFraction.of(3, 2), bound))
                .isInstanceOf(RatioException.class)
                .hasMessageStartingWith("The denominator bound (" + bound + ") must lie from 1 to 100000.");
    }

    @ParameterizedTest
    @CsvSource({"NaN", "Infinity", "-1", "0"})
    void a_double_that_is_no_ratio_is_refused(double target) {
        assertThatThrownBy(() -> SternBrocot.nearest(target, 10)).isInstanceOf(RatioException.class);
    }
}
