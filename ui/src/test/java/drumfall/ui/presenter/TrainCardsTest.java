// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.Criterion;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.why.Card;
import drumfall.solver.rating.why.WhereFromBook;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TrainCardsTest {
    /** The usual seconds train, 64/8 and 60/8 with an escape wheel of 30: Goodrich, The Modern Clock (1905). */
    private static final Train SECONDS =
            new Train(List.of(mesh(96, 8), mesh(64, 8), mesh(60, 8)), 1, BigFraction.of(48, 1000), Reeving.DOUBLE, 30);

    private static Mesh mesh(int wheel, int leaves) {
        return Mesh.of(wheel, leaves, ToothModule.ofMillimetres("1"));
    }

    private final Brief brief = SmallBriefs.small();
    private final Rating rating = new TrainRater(brief).rate(SECONDS);
    private final TrainCards figures = new TrainCards(rating, brief, UnitSystem.METRIC);

    @ParameterizedTest
    @CsvSource({
        "HOURS_PER_DRUM_TURN, 12 h",
        "BEATS_PER_HOUR, 3600",
        "BEAT, 1 s",
        // L = g / π² = 993.62 mm at standard gravity, a little less at a finite arc.
        "PENDULUM_LENGTH, 993 mm",
    })
    void the_seconds_train_shows_its_known_figures(Figure figure, String shown) {
        assertThat(figures.value(figure).text()).isEqualTo(shown);
    }

    @ParameterizedTest
    @EnumSource(Figure.class)
    void every_figure_says_where_it_comes_from(Figure figure) {
        WhereCard card = figures.card(figure);
        assertThat(card.value()).isEqualTo(figures.value(figure));
        assertThat(card.formula()).isNotBlank();
        assertThat(card.source()).isNotBlank();
        assertThat(card.inputs()).isNotEmpty().allSatisfy(input -> {
            assertThat(input.meaning()).isNotBlank();
            assertThat(input.value()).isNotBlank();
        });
    }

    @ParameterizedTest
    @EnumSource(Figure.class)
    void cards_lead_to_places_that_the_sheet_has(Figure figure) {
        figures.card(figure)
                .inputs()
                .forEach(input -> input.pointer()
                        .ifPresent(pointer -> assertThat(BriefSheet.rowOf(pointer))
                                .as(pointer)
                                .isPresent()));
    }

    // The window words no formula of a train itself, and no card without one: the solver's reckon their figures.
    @ParameterizedTest
    @EnumSource(Figure.class)
    void the_cards_are_the_solvers_which_reckon_themselves(Figure figure) {
        assertThat(Criterion.values())
                .allSatisfy(deciding ->
                        assertThat(Figure.ofCard(figure.card(deciding))).contains(figure));
        Card card = WhereFromBook.of(new TrainRater(brief), rating)
                .card(figure.card(rating.weight().deciding()))
                .orElseThrow();
        assertThat(figures.card(figure).formula())
                .isEqualTo(card.formula().orElseThrow().text());
        assertThat(figures.card(figure).source()).isEqualTo(card.source());
        // 1e-10 of the value: some hundred operations in a chain.
        assertThat(card.reckoned()).isCloseTo(card.value(), withinPercentage(1e-8));
    }

    // What a weight is rounded up from must not be shown rounded down where it is put in.
    @Test
    void a_figure_put_in_is_called_and_rounded_as_on_its_own_card() {
        WhereCard.Input least = figures.card(Figure.RECOMMENDED_WEIGHT).inputs().get(0);

        assertThat(least.meaning()).isEqualTo(Figure.LEAST_WEIGHT.title());
        assertThat(least.value()).isEqualTo(figures.value(Figure.LEAST_WEIGHT).text());
        assertThat(least.card().orElseThrow().get().title()).isEqualTo(Figure.LEAST_WEIGHT.title());
    }

    @Test
    void the_least_weight_says_how_far_friction_may_move_it() {
        WhereCard card = figures.card(Figure.LEAST_WEIGHT);

        assertThat(card.inputs()).extracting(WhereCard.Input::value).anyMatch(value -> value.contains(" – "));
    }

    @Test
    void the_pull_is_that_of_the_criterion_that_decides() {
        double deciding =
                rating.weight().running().criterion() == rating.weight().deciding()
                        ? rating.weight().running().tension()
                        : rating.weight().binding().tension();

        assertThat(figures.value(Figure.LINE_TENSION))
                .isEqualTo(ShownFigure.of(Dimension.FORCE, deciding, UnitSystem.METRIC, ShownFigure.Rounding.UP));
    }
}
