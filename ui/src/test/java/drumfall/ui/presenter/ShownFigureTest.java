// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.ui.presenter.ShownFigure.Rounding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownFigureTest {
    @ParameterizedTest
    @CsvSource({
        "MASS, 3.9078, METRIC, UP, 3.91, kg",
        "MASS, 3.9012, METRIC, UP, 3.91, kg",
        "MASS, 0.1248, METRIC, NEAREST, 125, g",
        // International avoirdupois pound, exactly 0.45359237 kg (1959 agreement).
        "MASS, 0.45359237, IMPERIAL, NEAREST, 1, lb",
        // International inch, exactly 0.0254 m (1959 agreement).
        "LENGTH, 0.0254, IMPERIAL, NEAREST, 1, in",
        "TIME, 655900, METRIC, DOWN, 7.59, d",
        "NUMBER, 30, METRIC, NEAREST, 30, ''",
    })
    void a_figure_is_shown_to_three_digits_rounded_to_the_safe_side(
            Dimension dimension, double si, UnitSystem units, Rounding rounding, String number, String unit) {
        assertThat(ShownFigure.of(dimension, si, units, rounding)).isEqualTo(new ShownFigure(number, unit));
    }

    @Test
    void what_is_not_finite_is_shown_as_a_dash() {
        assertThat(ShownFigure.of(Dimension.MASS, Double.POSITIVE_INFINITY, UnitSystem.METRIC))
                .isEqualTo(ShownFigure.NONE);
    }
}
