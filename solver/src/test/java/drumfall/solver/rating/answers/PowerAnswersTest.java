// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.power.answers.FreeSpin;
import drumfall.solver.power.books.Place;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.DemoTrain;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PowerAnswersTest {
    private static final TrainRater RATER = new TrainRater(Briefs.demoWith("/parts/hubWall = \"0 mm\""));
    private static final Train TRAIN = DemoTrain.train();
    private static final Rating RATING = RATER.rate(TRAIN);

    @Test
    void the_train_of_these_tests_meets_the_demonstration_brief() {
        assertThat(RATING.feasible()).isTrue();
    }

    // Of a weight's power the pendulum of a printed clock gets a tenth to a third and a little: 10 to 35 %, from
    // memory.
    @Test
    void the_demonstrations_pendulum_gets_a_tenth_to_a_third_of_the_weights_power() {
        for (double weight : new double[] {RATING.weight().leastWeight(), RATING.recommendedWeight()}) {
            var books = new PowerAnswers(RATER, TRAIN, weight).books();

            assertThat(books.at(Place.PENDULUM) / books.weightPower()).isBetween(0.10, 0.35);
            assertThat(books.imbalance()).isCloseTo(0, within(1e-9));
        }
    }

    // The same change written into the brief, where it concerns every arbor of the role; the roles taken have one
    // arbor.
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "BEARING; 1; /arbors/centre/bearings = \"both\"",
                "BEARING; 4; /arbors/escape/bearings = \"both\"",
                "THINNER_ARBOR; 0; /arbors/drum/diameter = \"3 mm\"",
                "THINNER_ARBOR; 1; /arbors/centre/diameter = \"2.25 mm\"",
                "THINNER_ARBOR; 4; /arbors/escape/diameter = \"1.125 mm\"",
            })
    void a_change_weighs_what_the_changed_brief_weighs(Change.Kind kind, int number, String edit) {
        double after = new TrainRater(Briefs.demoWith("/parts/hubWall = \"0 mm\" & " + edit))
                .rate(TRAIN)
                .weight()
                .leastWeight();

        assertThat(change(kind, number).leastAfter()).isCloseTo(after, withinPercentage(1e-9));
        assertThat(change(kind, number).leastBefore()).isCloseTo(RATING.weight().leastWeight(), withinPercentage(1e-9));
    }

    @Test
    void a_thinner_arbor_always_saves_and_a_lighter_escape_wheel_too() {
        for (int arbor = 0; arbor <= TRAIN.meshes().size(); arbor++) {
            assertThat(change(Change.Kind.THINNER_ARBOR, arbor).saved()).isPositive();
        }
        assertThat(change(Change.Kind.LIGHTER_ESCAPE_WHEEL, TRAIN.meshes().size())
                        .saved())
                .isPositive();
    }

    @Test
    void one_more_leaf_weighs_what_the_changed_train_weighs() {
        // 58/9 with one more leaf: 58 · 10 / 9 = 64.4, so 64/10.
        Change change = change(Change.Kind.ONE_MORE_LEAF, 1);
        Train changed = Trains.of("68/8 m1 | 64/10 m1 · 45/10 m1 · 48/8 m1 · E21", "36", 2);

        assertThat(change.train()).contains(changed);
        assertThat(change.from()).isEqualTo(9);
        assertThat(change.to()).isEqualTo(10);
        assertThat(change.leastAfter()).isCloseTo(RATER.rate(changed).weight().leastWeight(), withinPercentage(1e-9));
    }

    private static Change change(Change.Kind kind, int number) {
        return new Changes(RATER, TRAIN)
                .all().stream()
                        .filter(change -> change.kind() == kind && change.number() == number)
                        .findFirst()
                        .orElseThrow();
    }

    // Common practice, no source: 10 to 20 s for a free bore; half and twice that for arbors of every kind and size.
    // The
    // drum is left out: it weighs more and no one flicks it.
    @Test
    void arbors_of_the_demonstration_spin_for_some_seconds_after_a_flick() {
        var answers = new PowerAnswers(RATER, TRAIN, RATING.recommendedWeight());

        assertThat(answers.freeSpins().subList(1, answers.freeSpins().size()))
                .extracting(FreeSpin::seconds)
                .allSatisfy(seconds -> assertThat(seconds).isBetween(5.0, 40.0));
    }

    @Test
    void every_answer_carries_what_went_into_it() {
        double weight = RATING.recommendedWeight();
        var answers = new PowerAnswers(RATER, TRAIN, weight);

        assertThat(answers.winding().weight()).isEqualTo(weight);
        assertThat(answers.coasting().semiArc()).isEqualTo(answers.books().semiArc());
        assertThat(answers.coasting().beats()).isPositive();
        assertThat(answers.lineBend().ratio())
                .isCloseTo(TRAIN.drumDiameter().doubleValue() / 0.0015, withinPercentage(1e-9));
        assertThat(answers.hangingShock().force())
                .isGreaterThan(2 * answers.hangingShock().load());
        assertThat(answers.wallMoment().moment()).isPositive();
        assertThat(answers.rods())
                .hasSize(TRAIN.meshes().size() + 1)
                .allSatisfy(rod -> assertThat(rod.stress()).isPositive());
        assertThat(answers.arcs().get(0).weight()).isCloseTo(RATING.weight().leastWeight(), withinPercentage(1e-9));
    }

    @Test
    void a_weight_under_the_least_is_refused() {
        double light = RATING.weight().leastWeight() * 0.9;

        assertThatThrownBy(() -> new PowerAnswers(RATER, TRAIN, light))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Maybe hang");
    }
}
