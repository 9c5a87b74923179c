// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.quantity.Dimension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.TypeConversionException;

class QuantitySpanTest {
    /** One rounding of a double of the order of 1e-4. */
    private static final double ROUNDING = 1e-18;

    @ParameterizedTest
    @CsvSource({
        "0.05-0.1 mm, 0.05e-3, 0.1e-3",
        "0.05mm-0.1mm, 0.05e-3, 0.1e-3",
        "50 µm - 0.1 mm, 0.05e-3, 0.1e-3",
        "0.1 mm, 0.1e-3, 0.1e-3",
        "-0.1 mm, -0.1e-3, -0.1e-3",
        "-0.1 mm - 0.1 mm, -0.1e-3, 0.1e-3",
    })
    void a_band_has_two_ends_and_its_unit_once_or_twice(String text, double low, double high) {
        QuantitySpan span = QuantitySpan.parse(Dimension.LENGTH, text);
        assertThat(span.low().si()).isCloseTo(low, within(ROUNDING));
        assertThat(span.high().si()).isCloseTo(high, within(ROUNDING));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", "0.1-", "0.1 mm-x", "0.1", "0.1-0.2"})
    void what_is_no_length_is_refused(String text) {
        assertThatThrownBy(() -> QuantitySpan.parse(Dimension.LENGTH, text))
                .isInstanceOf(TypeConversionException.class);
    }
}
