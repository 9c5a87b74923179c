// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WhereFromTest {
    /** The usual seconds train, 64/8 and 60/8 with an escape wheel of 30: Goodrich, The Modern Clock (1905). */
    private static final Train SECONDS =
            new Train(List.of(mesh(96, 8), mesh(64, 8), mesh(60, 8)), 1, BigFraction.of(48, 1000), Reeving.DOUBLE, 30);

    private static Mesh mesh(int wheel, int leaves) {
        return Mesh.of(wheel, leaves, ToothModule.ofMillimetres("1"));
    }

    private final Brief brief = SmallBriefs.small();
    private final WhereFrom figures = new WhereFrom(new TrainRater(brief).rate(SECONDS), brief, UnitSystem.METRIC);

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
}
