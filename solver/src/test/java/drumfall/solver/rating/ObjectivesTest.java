// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.brief.ObjectiveFigure;
import drumfall.solver.samples.Briefs;
import drumfall.solver.samples.HandTeeth;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.Train;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The objectives of one train of the demonstration brief, by hand in SI units. */
class ObjectivesTest {
    private static final Train TRAIN = Trains.of("68/8 m1 | 58/9 m1 · 45/10 m1 · 48/8 m1 · E21", "36", 2);

    // Filament, worked apart from the program as in the test of the parts, teeth thinned by 0.075 mm, leaves of 11.3
    // mm,
    // g:
    // wheels 8.10575, 6.80364, 5.11432, 5.50359; pinions 0.66240, 0.88629, 1.14234, 0.66240; escape wheel 5.35458;
    // drum,
    // ratchet, the click's ground and square 24.92685, 2.88608, 4.83270, 2.42983; a milligram, since the rack is rolled
    // in steps. Largest wheel 68 +
    // 2
    // mm;
    // centre distances 38 + 33.5 + 27.5 + 28 mm; duration 8.5 · 2.5 / (π 0.0375) h against 8 d.
    @ParameterizedTest
    @CsvSource({
        "FILAMENT_MASS, 0.06931076, 1e-6",
        "LARGEST_WHEEL, 0.070, 1e-15",
        "CENTRE_DISTANCES, 0.127, 1e-15",
        "MESHES, 4, 0",
        "MODULES, 1, 0",
        "DURATION_ERROR, 41847.832, 0.001",
        "RECOMMENDED_WEIGHT, 3.25, 0",
    })
    void an_objective_has_the_value_worked_out_by_hand(ObjectiveFigure figure, double value, double tolerance) {
        Objectives objectives = HandTeeth.rater(Briefs.demoWith("")).objectives();

        assertThat(objectives.value(figure, TRAIN, 3.25)).isCloseTo(value, within(tolerance));
    }

    @Test
    void different_modules_are_counted_once_each() {
        Objectives objectives = HandTeeth.rater(Briefs.demoWith("")).objectives();
        Train mixed = Trains.of("68/8 m1.5 | 58/9 m1 · 45/10 m1.25 · 48/8 m1 · E21", "36", 2);

        assertThat(objectives.value(ObjectiveFigure.MODULES, mixed, 1)).isEqualTo(3);
        assertThat(objectives.value(ObjectiveFigure.LARGEST_WHEEL, mixed, 1)).isCloseTo(0.105, within(1e-15));
    }

    @Test
    void a_rating_holds_the_objectives_in_the_order_of_the_brief() {
        Rating rating = HandTeeth.rater(Briefs.demoWith("/objectives = [{\"figure\": \"meshes\"},"
                        + " {\"figure\": \"largest-wheel\", \"resolution\": \"1 mm\"}]"))
                .rate(TRAIN);

        assertThat(rating.objectiveValues()).containsExactly(4.0, 0.07);
        assertThat(rating.cell()).isEqualTo(new Cell(java.util.List.of(4L, 70L)));
    }

    // A duration is shown rounded down: 8.5 · 2.5 / (π 0.0375) = 180.3756… hours.
    @Test
    void a_duration_is_shown_rounded_down() {
        Rating rating = HandTeeth.rater(Briefs.demoWith("")).rate(TRAIN);

        assertThat(rating.durationRoundedDown().doubleValue()).isCloseTo(180.37560, within(5e-6));
        assertThat(rating.pendulumLength()).isCloseTo(0.241005, within(5e-7));
        assertThat(rating.filamentMass()).isCloseTo(0.06931076, within(1e-6));
    }
}
