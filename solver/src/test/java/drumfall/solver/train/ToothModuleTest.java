// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ToothModuleTest {
    // ISO 54:1996 series I and II as quoted on a secondary page; 25.4/20 mm is diametral pitch 20.
    @ParameterizedTest
    @CsvSource({"1, 1", "1.25, 1.25", "1.250, 1.25", "1.125, 1.125", "50, 50", "1.27, 1.27", "0.05, 0.05", "100, 100"})
    void a_module_keeps_its_size_exactly(String written, String shown) {
        ToothModule module = ToothModule.ofMillimetres(written);

        assertThat(module).hasToString(shown);
        assertThat(module).isEqualTo(ToothModule.ofMetres(BigFraction.of(module.nanometres(), 1_000_000_000)));
        assertThat(module.millimetres()).isEqualTo(Double.parseDouble(shown));
    }

    @Test
    void trailing_zeros_make_no_other_module() {
        assertThat(ToothModule.ofMillimetres("1.250")).isEqualTo(ToothModule.ofMillimetres("1.25"));
        assertThat(ToothModule.ofMillimetres("1.25")).isLessThan(ToothModule.ofMillimetres("1.5"));
    }

    @ParameterizedTest
    @ValueSource(ints = {49_999, 0, -1_000_000, 100_000_001, Integer.MAX_VALUE})
    void a_module_out_of_range_is_refused(int nanometres) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ToothModule(nanometres))
                .withMessageContaining("0.05 mm to 100 mm");
    }

    // 25.4/22 mm is diametral pitch 22: no whole number of nanometres.
    @ParameterizedTest
    @CsvSource({"254, 220000", "1, 3000", "5, 1", "-1, 1000", "0, 1"})
    void a_length_that_is_no_module_is_refused(int numerator, int denominator) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ToothModule.ofMetres(BigFraction.of(numerator, denominator)))
                .withMessageContaining("0.05 mm to 100 mm");
    }

    @Test
    void a_decimal_finer_than_a_nanometre_is_refused() {
        assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> ToothModule.ofMillimetres("1.2500001"));
    }
}
