// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.rating.BandPoint;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.DemoTrain;
import drumfall.solver.samples.HandTeeth;
import drumfall.solver.train.Train;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WeightChanceTest {
    private static final int TRIALS = "full".equals(System.getProperty("drumfall.samples")) ? 10_000 : 2_000;
    private static final Train TRAIN = DemoTrain.train();
    private static final TrainRater CLOSED_FORM = HandTeeth.rater(BundledBriefs.demo());
    private static final double[] PLAIN = plainSample(CLOSED_FORM);
    private static final WeightChance STRATA = WeightChance.of(CLOSED_FORM, TRAIN, TRIALS);

    @Test
    void quantiles_lie_between_the_smoothest_and_the_roughest_and_rise() {
        TrainRater rater = new TrainRater(BundledBriefs.demo());
        Rating rating = rater.rate(TRAIN);
        WeightChance chance = WeightChance.of(rater, TRAIN, TRIALS);

        double before = rating.leastSmoothest();
        for (double share : new double[] {0.001, 0.05, 0.25, 0.5, 0.75, 0.95, 1}) {
            assertThat(chance.quantile(share)).isGreaterThanOrEqualTo(before);
            before = chance.quantile(share);
        }
        assertThat(before).isLessThan(rating.leastRoughest());
        assertThat(chance.quantile(0.5)).isCloseTo(rating.weight().leastWeight(), withinPercentage(10));
    }

    // The weight never falls as friction at the teeth grows, so the lower and the upper edges of the levels enclose the
    // truth. 1.5 % between them: eighty levels of a band that moves
    // the weight by half, and more where it is rough.
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.5, 0.95})
    void levels_of_tooth_friction_enclose_the_quantiles_closely(double share) {
        TrainRater rater = new TrainRater(BundledBriefs.demo());
        double lower =
                WeightChance.of(rater, TRAIN, TRIALS, WeightChance.Level.LOWER).quantile(share);
        double middle =
                WeightChance.of(rater, TRAIN, TRIALS, WeightChance.Level.MIDDLE).quantile(share);
        double upper =
                WeightChance.of(rater, TRAIN, TRIALS, WeightChance.Level.UPPER).quantile(share);

        assertThat(lower).isLessThan(middle);
        assertThat(middle).isLessThan(upper);
        assertThat(upper / lower).isLessThan(1.015);
    }

    // Against a plain sample without strata or levels, closed-form teeth. 2 %: three standard errors of a quantile of
    // 4000 draws at these densities.
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.5, 0.95})
    void strata_give_the_quantiles_of_a_plain_sample(double share) {
        assertThat(STRATA.quantile(share)).isCloseTo(PLAIN[(int) (share * PLAIN.length)], withinPercentage(2));
    }

    /** Least weights of a plain sample, rising. */
    private static double[] plainSample(TrainRater rater) {
        Random random = new Random(51);
        double[] plain = new double[4_000];
        for (int i = 0; i < plain.length; i++) {
            BandPoint point =
                    new BandPoint(random.nextDouble(), random.nextDouble(), random.nextDouble(), random.nextDouble());
            plain[i] = new WeightWalk(rater.movement(point)).weigh(TRAIN).leastWeight();
        }
        Arrays.sort(plain);
        return plain;
    }

    @Test
    void the_chance_that_a_weight_runs_is_the_share_of_builders_who_need_no_more() {
        WeightChance chance = WeightChance.of(new TrainRater(BundledBriefs.demo()), TRAIN, TRIALS);

        assertThat(chance.thatRun(0)).isZero();
        assertThat(chance.thatRun(chance.quantile(1))).isEqualTo(1);
        assertThat(chance.thatRun(chance.quantile(0.95))).isCloseTo(0.95, within(1.0 / TRIALS));
    }

    @Test
    void bands_without_width_leave_no_doubt() {
        TrainRater rater =
                new TrainRater(Briefs.demoWith("/friction/teeth/low = \"0.25\" & /friction/teeth/high = \"0.25\""
                        + " & /friction/bores/low = \"0.2\" & /friction/bores/high = \"0.2\""
                        + " & /friction/pallets/low = \"0.2\" & /friction/pallets/high = \"0.2\""
                        + " & /pendulum/quality/low = \"350\" & /pendulum/quality/high = \"350\""));
        WeightChance chance = WeightChance.of(rater, TRAIN, WeightChance.LEVELS);
        double least = rater.rate(TRAIN).weight().leastWeight();

        assertThat(chance.quantile(0.01)).isCloseTo(least, withinPercentage(1e-9));
        assertThat(chance.quantile(1)).isCloseTo(least, withinPercentage(1e-9));
    }

    @Test
    void the_same_question_has_the_same_answer() {
        TrainRater rater = new TrainRater(BundledBriefs.demo());

        assertThat(WeightChance.of(rater, TRAIN, 400).quantile(0.37))
                .isEqualTo(WeightChance.of(rater, TRAIN, 400).quantile(0.37));
    }

    @Test
    void trials_that_cannot_be_shared_out_are_refused() {
        TrainRater rater = new TrainRater(BundledBriefs.demo());

        assertThatThrownBy(() -> WeightChance.of(rater, TRAIN, 81))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must be a multiple of 80");
        WeightChance chance = WeightChance.of(rater, TRAIN, 80);
        assertThatThrownBy(() -> chance.quantile(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("more than 0");
    }
}
