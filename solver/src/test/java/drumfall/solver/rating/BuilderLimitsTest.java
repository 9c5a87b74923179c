// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.rating.answers.WeightChance;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.DemoTrain;
import drumfall.solver.train.Train;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How many builders a recommended weight serves, against counting the whole sample. */
class BuilderLimitsTest {
    private static final Train TRAIN = DemoTrain.train();

    @ParameterizedTest
    @ValueSource(strings = {"0 %", "10 %", "30 %", "40 %", "0.55", "80 %", "500 %"})
    void the_share_is_that_of_the_whole_sample(String reserve) {
        TrainRater rater = rater(reserve, "50 %");
        Rating rating = rater.rate(TRAIN);
        double share = WeightChance.of(rater, TRAIN, BuilderLimits.TRIALS).thatRun(rating.recommendedWeight());

        assertThat(figure(rating).figure()).isEqualTo(share);
        assertThat(rater.servesBuilders(TRAIN)).isEqualTo(share >= 0.5);
    }

    // The edge itself is enough, one builder in two thousand more is not.
    @Test
    void as_many_as_asked_are_enough_and_one_more_is_not() {
        int served = (int) Math.round(figure(rater("30 %", "1").rate(TRAIN)).figure() * BuilderLimits.TRIALS);
        assertThat(served).isBetween(1, BuilderLimits.TRIALS - 1);
        String same = "%.4f".formatted((double) served / BuilderLimits.TRIALS);
        String more = "%.4f".formatted((double) (served + 1) / BuilderLimits.TRIALS);
        String hair = "%.7f".formatted((double) served / BuilderLimits.TRIALS + 1e-7);

        assertThat(figure(rater("30 %", same).rate(TRAIN)).met()).isTrue();
        assertThat(rater("30 %", same).servesBuilders(TRAIN)).isTrue();
        for (String asked : new String[] {more, hair}) {
            assertThat(figure(rater("30 %", asked).rate(TRAIN)).met()).isFalse();
            assertThat(rater("30 %", asked).servesBuilders(TRAIN)).isFalse();
        }
    }

    @Test
    void a_weight_for_the_roughest_clock_serves_all() {
        assertThat(figure(rater("500 %", "1").rate(TRAIN)).figure()).isEqualTo(1);
        assertThat(figure(rater("500 %", "1").rate(TRAIN)).met()).isTrue();
    }

    // An escape wheel that keeps no arc is driven by no weight, however smooth the clock.
    @Test
    void nobody_is_served_where_no_weight_drives_the_train() {
        TrainRater rater =
                new TrainRater(Briefs.demoWith("/weight/builders = \"1 %\" & /escapement/reserveArc = \"12 deg\""));
        Rating rating = rater.rate(TRAIN);

        assertThat(rating.recommendedWeight()).isInfinite();
        assertThat(figure(rating).figure()).isZero();
        assertThat(figure(rating).met()).isFalse();
        assertThat(rater.servesBuilders(TRAIN)).isFalse();
    }

    @Test
    void a_waived_demand_is_met_and_its_figure_stays() {
        var brief = Briefs.demoWith("/weight/reserve = \"0 %\" & /weight/builders = \"100 %\"");
        DemandFigure strict = figure(new TrainRater(brief).rate(TRAIN));
        TrainRater waived = new TrainRater(brief, EnumSet.of(Demand.BUILDERS));

        assertThat(strict.met()).isFalse();
        assertThat(figure(waived.rate(TRAIN)).met()).isTrue();
        assertThat(figure(waived.rate(TRAIN)).figure()).isEqualTo(strict.figure());
        assertThat(waived.servesBuilders(TRAIN)).isTrue();
    }

    @Test
    void a_brief_that_does_not_ask_hears_nothing_of_it() {
        Rating rating = new TrainRater(Briefs.demoWith("")).rate(TRAIN);

        assertThat(rating.demands()).noneMatch(figure -> figure.demand() == Demand.BUILDERS);
    }

    private static TrainRater rater(String reserve, String builders) {
        return new TrainRater(
                Briefs.demoWith("/weight/reserve = \"%s\" & /weight/builders = \"%s\"".formatted(reserve, builders)));
    }

    private static DemandFigure figure(Rating rating) {
        return rating.demands().stream()
                .filter(figure -> figure.demand() == Demand.BUILDERS)
                .findFirst()
                .orElseThrow();
    }
}
