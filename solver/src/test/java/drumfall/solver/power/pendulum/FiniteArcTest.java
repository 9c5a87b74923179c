// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FiniteArcTest {
    private static final double DAY = 86_400;

    // J. Denker, "Classical Simple Pendulum", table 1; half of the last printed digit.
    @ParameterizedTest
    @CsvSource({
        "15, 1.0043, 0.00005",
        "30, 1.01741, 0.000005",
        "45, 1.03997, 0.000005",
        "60, 1.07318, 0.000005",
        "75, 1.11896, 0.000005",
        "90, 1.18034, 0.000005",
        "105, 1.26221, 0.000005",
        "120, 1.37288, 0.000005",
        "135, 1.52795, 0.000005",
        "150, 1.7622, 0.00005",
        "165, 2.18544, 0.000005",
    })
    void the_period_grows_with_the_arc_as_tabled(double degrees, double ratio, double tolerance) {
        assertThat(FiniteArc.periodRatio(Math.toRadians(degrees))).isCloseTo(ratio, within(tolerance));
    }

    // Seconds a day lost, 86400 (1 - T0/T), from the arithmetic-geometric mean to four decimals; ten and fifteen
    // degrees to
    // three or four.
    @ParameterizedTest
    @CsvSource({
        "0.5, 0.4112",
        "1, 1.6449",
        "1.5, 3.7011",
        "2, 6.5797",
        "2.5, 10.2807",
        "3, 14.8042",
        "4, 26.3183",
        "5, 41.1217",
        "6, 59.2142",
        "8, 105.2651",
        "10, 164.4674",
        "15, 369.979",
    })
    void the_circular_error_is_the_exact_one(double degrees, double secondsPerDay) {
        double lost = DAY * (1 - 1 / FiniteArc.periodRatio(Math.toRadians(degrees)));

        assertThat(lost).isCloseTo(secondsPerDay, within(degrees < 15 ? 0.00005 : 0.0005));
    }

    // Beckett, 8th ed. 1903, pp. 34-35: 5400 a² seconds a day, the first term of the series; the next is a²/12 of it or
    // less, 0.1 % at six degrees.
    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 4, 6})
    void a_small_arc_loses_as_becketts_rule_says(double degrees) {
        double arc = Math.toRadians(degrees);

        assertThat(DAY * (1 - 1 / FiniteArc.periodRatio(arc))).isCloseTo(5400 * arc * arc, withinPercentage(0.1));
    }

    @Test
    void a_vanishing_arc_has_the_small_arc_period() {
        assertThat(FiniteArc.periodRatio(0)).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, Math.PI, 4, Double.NaN})
    void an_arc_over_the_top_is_refused(double arc) {
        assertThatIllegalArgumentException().isThrownBy(() -> FiniteArc.periodRatio(arc));
    }
}
