// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NanometresTest {
    // The inch is 25.4 mm exactly (international yard and pound agreement of 1959); the rest is arithmetic.
    @ParameterizedTest
    @CsvSource({"1, 39, 25641026", "254, 640000, 396875", "254, 10000, 25400000", "-1, 1000, -1000000"})
    void metres_become_nanometres_without_rounding_or_not_at_all(int above, int below, long nanometres) {
        BigFraction metres = BigFraction.of(above, below);

        if (metres.multiply(1_000_000_000).getDenominator().intValueExact() == 1) {
            assertThat(Nanometres.exact(metres)).isEqualTo(nanometres);
        } else {
            assertThatThrownBy(() -> Nanometres.exact(metres))
                    .isInstanceOf(FitException.class)
                    .hasMessage("The value (1 / 39 m) of a length must be a whole number of nanometres."
                            + " Maybe take 25.641026 mm.");
        }
    }

    @Test
    void a_kilometre_is_refused() {
        assertThatThrownBy(() -> Nanometres.exact(BigFraction.of(1000)))
                .hasMessage("The value (1000 m) of a length must be at most 100000 mm. Maybe look at its unit.");
    }

    @ParameterizedTest
    @CsvSource({"0, 0 mm", "396875, 0.396875 mm", "1600000, 1.6 mm", "20000000, 20 mm", "-100000, -0.1 mm"})
    void a_length_is_written_in_millimetres_with_all_its_digits(long nanometres, String text) {
        assertThat(Nanometres.text(nanometres)).isEqualTo(text);
    }

    @Test
    void a_millimetre_is_a_thousandth_of_a_metre() {
        assertThat(Nanometres.metres(Nanometres.MILLIMETRE)).isEqualTo(0.001);
    }
}
