// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import static drumfall.solver.fit.shake.Stacks.exact;
import static drumfall.solver.fit.shake.Stacks.ofErrors;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ShakeSampleTest {
    private static final int TRIALS = System.getProperty("drumfall.samples", "").equals("full") ? 1_000_000 : 20_000;

    /** Standard errors that a sampled chance may be off: beyond four, 6 in 100 000, and the seeds are fixed. */
    private static final double ERRORS = 4;

    @ParameterizedTest
    @CsvSource({"UNIFORM, false", "UNIFORM, true", "TRIANGULAR, false", "TRIANGULAR, true"})
    void sampled_chances_agree_with_the_exact_ones_within_their_standard_error(ErrorShape shape, boolean antithetic) {
        SplittableRandom random = new SplittableRandom(77);
        for (int i = 0; i < 10; i++) {
            ArborStack stack = ofErrors(shape, random.longs(5, 10_000, 300_000).toArray());
            ShakeSample sample = ShakeSample.of(stack, new Sampling(i, TRIALS, antithetic));
            ShakeBand band = new ShakeBand(0, random.nextLong(200_000, 900_000));
            double mean = random.nextDouble(0, 600_000);

            Chance sampled = sample.missing(mean, band);
            Chance exact = exact(stack).missing(mean, band);
            int independent = antithetic ? TRIALS / 2 : TRIALS;
            double bound = Math.sqrt(exact.outside() * (1 - exact.outside()) / independent);

            assertThat(sampled.outside()).isCloseTo(exact.outside(), within(ERRORS * bound));
            assertThat(sampled.standardError()).isCloseTo(bound, within(0.2 * bound + 1.0 / independent));
        }
    }

    // The standard error of a sampled deviation is at most the deviation over √(2n), all three shapes being
    // flatter than normal.
    @ParameterizedTest
    @EnumSource(ErrorShape.class)
    void sampled_deviations_agree_with_the_formula(ErrorShape shape) {
        ArborStack stack = ofErrors(shape, 100_000, 200_000, 50_000);
        ShakeSample sample = ShakeSample.of(stack, new Sampling(5, TRIALS, false));
        double expected = stack.rootSumSquare().deviation();

        assertThat(sample.deviation()).isCloseTo(expected, within(ERRORS * expected / Math.sqrt(2.0 * TRIALS)));
        assertThat(sample.mean()).isCloseTo(0, within(ERRORS * expected / Math.sqrt(TRIALS)));
    }

    @Test
    void a_truncated_normal_error_is_a_normal_one_given_that_it_is_within_three_deviations() {
        ShakeSample sample =
                ShakeSample.of(ofErrors(ErrorShape.TRUNCATED_NORMAL, 300_000), new Sampling(8, TRIALS, false));
        double expected = Normal.within(1) / Normal.within(3);

        assertThat(1 - sample.chanceBelow(-100_000) - sample.chanceAbove(100_000))
                .isCloseTo(expected, within(ERRORS * Math.sqrt(expected * (1 - expected) / TRIALS)));
        assertThat(sample.chanceBelow(-300_000)).isZero();
        assertThat(sample.chanceAbove(300_000)).isZero();
    }

    @Test
    void the_same_seed_draws_the_same_sample_and_another_seed_another() {
        ArborStack stack = ofErrors(ErrorShape.UNIFORM, 100_000, 200_000);
        ShakeSample first = ShakeSample.of(stack, new Sampling(1, 1000, false));

        assertThat(ShakeSample.of(stack, new Sampling(1, 1000, false)).quantile(0.3))
                .isEqualTo(first.quantile(0.3));
        assertThat(ShakeSample.of(stack, new Sampling(2, 1000, false)).quantile(0.3))
                .isNotEqualTo(first.quantile(0.3));
    }

    @Test
    void mirrored_draws_cancel_in_the_mean() {
        ShakeSample sample =
                ShakeSample.of(ofErrors(ErrorShape.UNIFORM, 100_000, 200_000), new Sampling(1, 1000, true));

        assertThat(sample.mean()).isCloseTo(0, within(1e-6)); // rounding of a sum of a thousand
    }

    @Test
    void quantiles_split_the_sample_and_nought_is_none() {
        ShakeSample sample = ShakeSample.of(ofErrors(ErrorShape.UNIFORM, 100_000), new Sampling(1, 1000, false));

        assertThat(sample.chanceBelow(sample.quantile(0.25))).isEqualTo(0.25);
        assertThatThrownBy(() -> sample.quantile(0)).hasMessageContaining("The share (0.0 of the sample)");
    }
}
