// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChartScaleTest {
    @ParameterizedTest
    @CsvSource({"10, 6, 2", "10, 5, 2", "10, 4, 5", "1.9, 4, 0.5", "0.8, 4, 0.2", "6.25, 6, 2", "600, 6, 100"})
    void a_step_is_the_smallest_round_one_that_divides_the_span_often_enough(double span, int steps, double step) {
        // Powers of ten are not exact below one.
        assertThat(ChartScale.step(span, steps)).isCloseTo(step, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0", "-1", "Infinity", "NaN"})
    void a_span_that_is_none_has_steps_of_one(double span) {
        assertThat(ChartScale.step(span, 4)).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"4, 2, 4", "2.5, 0.5, 2.5", "0.25, 0.05, 0.25", "100, 100, 100"})
    void a_mark_has_the_decimals_of_its_step(double mark, double step, String words) {
        assertThat(ChartScale.words(mark, step)).isEqualTo(words);
    }
}
