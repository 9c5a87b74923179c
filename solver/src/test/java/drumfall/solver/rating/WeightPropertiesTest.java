// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.DrumRun;
import drumfall.solver.train.Train;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How the weight answers to the brief, over random trains of the demonstration brief's choices. */
class WeightPropertiesTest {
    private static final int SAMPLES = "full".equals(System.getProperty("drumfall.samples")) ? 2_000 : 60;

    // More friction, a lower quality, a larger reserve arc or heavier parts: by the formulas, each can only add. 1e-12
    // allows
    // for rounding where the figure does not enter the deciding criterion.
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "/friction/teeth/high = \"0.45\"",
                "/friction/bores/high = \"0.4\"",
                "/friction/pallets/high = \"0.3\"",
                "/friction/staticFactor = \"1.5\"",
                "/arbors/bearing/drag = \"0.05 N mm\"",
                "/arbors/bearing/friction = \"0.003\"",
                "/pendulum/quality/low = \"100\"",
                "/escapement/reserveArc = \"1.2 deg\"",
                "/escapement/palletArborTorque = \"0.01 N mm\"",
                "/escapement/inertiaShare = \"6 %\"",
                "/escapement/drop = \"2 deg\"",
                "/material/density = \"2 g/cm3\"",
                "/parts/wheelThickness = \"8 mm\"",
                "/hands/torque = \"2 N mm\"",
                "/weight/bindingReserve = \"60 %\"",
                "/line/pulleyEfficiency = \"0.85\"",
            })
    void a_harder_brief_never_needs_less_weight(String edit) {
        Brief easy = BundledBriefs.demo();
        TrainRater before = new TrainRater(easy);
        TrainRater after = new TrainRater(Briefs.demoWith(edit));
        Random random = new Random(11);
        boolean answered = false;
        for (int i = 0; i < SAMPLES; i++) {
            Train train = Trains.random(easy, random);
            double lighter = before.rate(train).weight().leastWeight();
            double heavier = after.rate(train).weight().leastWeight();
            if (Double.isInfinite(lighter)) {
                assertThat(heavier).isInfinite();
                continue;
            }
            answered |= heavier > lighter;
            assertThat(heavier).as("%s", train).isGreaterThanOrEqualTo(lighter * (1 - 1e-12));
        }
        // The weight must really depend on the figure: an edit without effect would prove nothing.
        assertThat(answered).isTrue();
    }

    @Test
    void the_recommended_weight_is_above_the_least_and_the_least_above_the_frictionless() {
        Brief brief = BundledBriefs.demo();
        TrainRater rater = new TrainRater(brief);
        TrainRater smooth = new TrainRater(Briefs.demoWith("/friction/teeth/low = \"0\" & /friction/teeth/high = \"0\""
                + " & /friction/bores/low = \"0\" & /friction/bores/high = \"0\""
                + " & /friction/pallets/low = \"0\" & /friction/pallets/high = \"0\""
                + " & /arbors/bearing/friction = \"0\" & /arbors/bearing/drag = \"0 N mm\" & /hands/torque = \"0 N mm\""
                + " & /escapement/inertiaShare = \"0\" & /escapement/palletArborTorque = \"0 N mm\""));
        Random random = new Random(12);
        for (int i = 0; i < SAMPLES; i++) {
            Train train = Trains.random(brief, random);
            Rating rating = rater.rate(train);
            if (Double.isInfinite(rating.recommendedWeight())) {
                continue;
            }
            assertThat(rating.recommendedWeight()).isEqualTo(rating.weight().leastWeight() * 1.4);
            assertThat(smooth.rate(train).weight().leastWeight())
                    .isLessThan(rating.weight().leastWeight());
            assertThat(rating.leastSmoothest()).isLessThan(rating.weight().leastWeight());
            assertThat(rating.leastRoughest()).isGreaterThan(rating.weight().leastWeight());
        }
    }

    // Of a weight's power the pendulum of a printed clock gets a tenth to a third: from memory, an order of magnitude
    // that a
    // slip of a factor in any step of the walk would leave.
    @Test
    void the_pendulum_gets_a_tenth_to_a_third_of_the_weights_power() {
        Brief brief = BundledBriefs.demo();
        TrainRater rater = new TrainRater(brief);
        Random random = new Random(13);
        int rated = 0;
        for (int i = 0; i < 50 * SAMPLES && rated < 20; i++) {
            Train train = Trains.random(brief, random);
            Rating rating = rater.rate(train);
            boolean likeTheFront =
                    rater.limits().pendulumFits(train.secondsPerBeat()) && rating.recommendedWeight() < 7;
            if (likeTheFront) {
                rated++;
                assertThat(pendulumShare(rater, rating)).as("%s", train).isBetween(0.10, 0.35);
            }
        }
        assertThat(rated).isGreaterThan(10);
    }

    private static double pendulumShare(TrainRater rater, Rating rating) {
        Train train = rating.train();
        DrumRun drum = rater.limits().drumRun(train.drumDiameter(), train.reeving());
        double seconds = train.hoursPerTurn(0) * drum.turns() * 3600;
        double weightPower = rating.weight().leastWeight()
                * Pendulum.STANDARD_GRAVITY
                * rater.brief().fall().height().si()
                / seconds;
        return rating.weight().need().pendulumLoss() / train.secondsPerBeat() / weightPower;
    }
}
