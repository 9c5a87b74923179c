// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.answers.Change;
import drumfall.solver.rating.answers.Changes;
import drumfall.solver.rating.answers.WeightChance;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cards of savings and of the chance that a weight runs. */
class WhereFromChangesTest {
    // 1e-10 of the weight: a chain is some hundred operations, and a saving a small difference of two.
    private static final double SHARE = 1e-10;

    private static final Train TRAIN = Trains.of("85/10 m1.5 | 66/12 m1.5 · 83/12 m1 · 55/12 m1 · E21", "36", 2);
    private static final int TRIALS = 400;

    private record Case(TrainRater rater, WhereFromBook book, List<Change> changes) {
        static Case of(String edits) {
            TrainRater rater = new TrainRater(Briefs.demoWith(edits));
            return new Case(rater, WhereFromBook.of(rater, rater.rate(TRAIN)), new Changes(rater, TRAIN).all());
        }

        Card card(Change change) {
            return new WhereFromChanges(rater, book, TRAIN).card(change);
        }
    }

    // The changed clock is walked arbor by arbor, the cards retrace a rating: two ways to one saving. With both
    // intermediate
    // arbors of one build, only the changed one of them may differ.
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "/arbors/intermediate/kind = \"turning\" & /arbors/centre/kind = \"fixed\"",
                "/arbors/drum/bearings = \"none\" & /arbors/escape/kind = \"turning\" & /weight/bindingReserve = \"90 %\""
            })
    void a_card_reckons_what_each_change_saves(String edits) {
        Case found = Case.of(edits);

        assertThat(found.changes()).isNotEmpty().allSatisfy(change -> {
            Card card = found.card(change);
            assertThat(card.value()).as(card.name()).isCloseTo(change.saved(), offset(change.leastBefore() * SHARE));
            assertThat(card.reckoned()).as(card.name()).isCloseTo(card.value(), offset(change.leastBefore() * SHARE));
            assertThat(card.reckonedFromTheEnds())
                    .as(card.name())
                    .isCloseTo(card.value(), offset(change.leastBefore() * SHARE));
        });
    }

    @Test
    void a_name_in_the_chain_of_a_change_is_one_figure() {
        Case found = Case.of("");
        for (Change change : found.changes()) {
            Map<String, Double> values = new HashMap<>();
            collect(found.card(change), values);
            assertThat(values).containsKeys("least-weight", "least-weight-after");
        }
    }

    private static void collect(Card card, Map<String, Double> values) {
        assertThat(values.getOrDefault(card.name(), card.value()))
                .as(card.name())
                .isEqualTo(card.value());
        if (values.put(card.name(), card.value()) == null) {
            card.inputs().forEach(input -> collect(input, values));
        }
    }

    @Test
    void names_of_changes_tell_them_apart() {
        assertThat(Case.of("").changes().stream().map(WhereFromChanges::name))
                .doesNotHaveDuplicates()
                .contains("saved-bearing-2", "saved-lighter-escape-wheel-5", "saved-one-more-leaf-1");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 2.5, 3, 4, 40})
    void the_chance_is_counted_anew_from_weight_trials_and_bands(double weight) {
        TrainRater rater = new TrainRater(Briefs.demoWith(""));
        WeightChance chance = WeightChance.of(rater, TRAIN, TRIALS);

        Card card = WhereFromChance.of(rater, TRAIN, chance, weight);

        assertThat(card.value()).isEqualTo(chance.thatRun(weight));
        assertThat(card.reckoned()).isEqualTo(card.value());
        assertThat(card.reckonedFromTheEnds()).isEqualTo(card.value());
    }

    // Each edge of a band moved outwards by a tenth makes other trials; the weight is the median, where counts move at
    // once.
    @Test
    void every_input_of_the_trials_moves_their_count() {
        TrainRater rater = new TrainRater(Briefs.demoWith(""));
        WeightChance chance = WeightChance.of(rater, TRAIN, TRIALS);
        Card card = WhereFromChance.of(rater, TRAIN, chance, chance.quantile(0.5))
                .inputs()
                .get(0);
        double[] inputs = card.inputs().stream().mapToDouble(Card::value).toArray();
        for (int i = 0; i < inputs.length; i++) {
            double[] moved = inputs.clone();
            moved[i] *= i == 1 ? 2 : 1.1;
            assertThat(card.formula().orElseThrow().function().of(moved))
                    .as(card.inputs().get(i).name())
                    .isNotEqualTo(card.value());
        }
    }
}
