// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.power.answers.FreeSpin;
import drumfall.solver.power.answers.RatchetHold;
import drumfall.solver.power.books.BookEntry;
import drumfall.solver.power.books.BookKeeper;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.books.PowerBooks;
import drumfall.solver.rating.BandPoint;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Under weights from the least up, from the smoothest clock of the demonstration's bands to the roughest. */
class WhereFromPowerTest {
    // 1e-10 of the value: a chain is some hundred operations, and bores are a small difference of torques.
    private static final double SHARE = 1e-10;

    private static final Brief BRIEF = BundledBriefs.demo();
    private static final TrainRater RATER = new TrainRater(BRIEF);

    private static final Train TRAIN = Trains.of("85/10 m1.5 | 66/12 m1.5 · 83/12 m1 · 55/12 m1 · E21", "36", 2);
    private static final WhereFromBook RATED = WhereFromBook.of(RATER, RATER.rate(TRAIN));

    private record Case(PowerBooks books, WhereFromPower cards) {}

    private static Case at(double over, double friction, double quality, int falls) {
        Train train = Trains.of("85/10 m1.5 | 66/12 m1.5 · 83/12 m1 · 55/12 m1 · E21", "36", falls);
        LoadedClock clock = RATER.loaded(train, new BandPoint(friction, friction, friction, quality));
        PowerBooks books = new BookKeeper(clock).under(clock.leastWeight() * over);
        return new Case(books, WhereFromPower.of(WhereFromBook.of(RATER, RATER.rate(train)), clock, books));
    }

    @ParameterizedTest
    @CsvSource({"1, 0.5, 0.5, 2", "1.4, 0.5, 0.5, 2", "1.4, 0, 0, 2", "1.4, 1, 1, 2", "3, 0.2, 0.9, 1"})
    void every_card_reckons_its_figure_from_its_inputs_and_from_the_ends(
            double over, double friction, double quality, int falls) {
        assertThat(at(over, friction, quality, falls).cards().figures()).allSatisfy(card -> {
            assertThat(card.reckoned()).as(card.name()).isCloseTo(card.value(), offset(Math.abs(card.value()) * SHARE));
            assertThat(card.reckonedFromTheEnds())
                    .as(card.name())
                    .isCloseTo(card.value(), offset(Math.abs(card.value()) * SHARE));
        });
    }

    @ParameterizedTest
    @CsvSource({"1.4, 0.5, 0.5, 2", "3, 0.2, 0.9, 1"})
    void every_entry_of_the_books_has_its_card_and_together_they_are_the_weight_s_power(
            double over, double friction, double quality, int falls) {
        Case found = at(over, friction, quality, falls);
        double sum = 0;
        for (BookEntry entry : found.books().entries()) {
            Card card = found.cards().card(entry.place(), entry.number()).orElseThrow();
            assertThat(card.value()).as(card.name()).isEqualTo(entry.power());
            sum += card.reckonedFromTheEnds();
        }
        double power = found.cards().card("weight-power-set").orElseThrow().value();
        assertThat(power).isEqualTo(found.books().weightPower());
        assertThat(sum).isCloseTo(power, offset(power * SHARE));
    }

    // The books' walk of arbors and the cards are two ways to one weight; 1e-10 as above.
    @ParameterizedTest
    @CsvSource({"0, 0", "0.5, 0.5", "0.3, 0.8", "1, 1"})
    void the_least_weight_is_reckoned_anew_at_any_place_in_the_bands(double friction, double quality) {
        BandPoint point = new BandPoint(friction, friction, friction, quality);
        LoadedClock clock = RATER.loaded(TRAIN, point);

        Card card = new WhereFromDials(RATED).leastWeight(BRIEF, point);

        assertThat(card.value()).isCloseTo(clock.leastWeight(), offset(card.value() * SHARE));
        assertThat(card.reckonedFromTheEnds()).isCloseTo(card.value(), offset(card.value() * SHARE));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.5, 0.5", "1, 1"})
    void the_arbor_that_stands_first_is_the_one_of_the_shortest_spin(double friction, double quality) {
        LoadedClock clock = RATER.loaded(TRAIN, new BandPoint(friction, friction, friction, quality));
        double[] spins =
                FreeSpin.all(clock).stream().mapToDouble(FreeSpin::seconds).toArray();

        Card card = new WhereFromDials(RATED).freeSpin(clock);

        assertThat(card.value()).isEqualTo(Arrays.stream(spins).min().orElseThrow());
        assertThat(card.inputs()).hasSameSizeAs(spins);
        for (int i = 0; i < spins.length; i++) {
            Card spin = card.inputs().get(i);
            assertThat(spin.value()).isEqualTo(spins[i]);
            assertThat(spin.reckonedFromTheEnds()).as(spin.name()).isCloseTo(spins[i], offset(spins[i] * SHARE));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 2, 9})
    void the_stress_in_the_ratchet_is_reckoned_anew_under_any_weight(double weight) {
        double arm = RATER.movement().lineArm(TRAIN.drumDiameter().doubleValue());
        RatchetHold hold =
                RATER.limits().ratchet().hold(weight, arm, TRAIN.reeving()).orElseThrow();

        Card card = new WhereFromDials(RATED).ratchet(weight).orElseThrow();

        assertThat(card.value()).isCloseTo(hold.toothBending(), offset(card.value() * SHARE));
        assertThat(RATED.card("ratchet-bending").orElseThrow().value()).isNotEqualTo(card.value());
    }

    /** A card whose inputs do not move its figure would be decoration: each is moved by one part in a thousand. */
    @ParameterizedTest
    @CsvSource({
        "arc-set",
        "torque-handed-on-2",
        "torque-given-3",
        "power-locking-1",
        "pendulum-loss-set",
        "coasting",
        "delivered"
    })
    void every_input_of_a_card_moves_its_figure(String name) {
        Card card = at(1.4, 0.5, 0.5, 2).cards().card(name).orElseThrow();
        double[] inputs = card.inputs().stream().mapToDouble(Card::value).toArray();
        for (int i = 0; i < inputs.length; i++) {
            // The arc is looked for from the escape angle up, so that one moves it only where no weight keeps more.
            boolean moves = inputs[i] != 0 && !(name.equals("arc-set") && i == 10);
            double[] moved = inputs.clone();
            moved[i] *= 1.001;
            if (moves) {
                assertThat(card.formula().orElseThrow().function().of(moved))
                        .as("%s by %s", name, card.inputs().get(i).name())
                        .isNotEqualTo(card.reckoned());
            }
        }
    }
}
