// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NormalGravityTest {
    // Equator and pole are the two constants of WGS 84 as many published programs quote them; 45° and 51.5° follow from
    // Somigliana's formula, recomputed to ten digits.
    @ParameterizedTest
    @CsvSource({"0, 9.7803253359", "45, 9.806197769", "51.5, 9.812033575", "90, 9.8321849378", "-45, 9.806197769"})
    void gravity_at_the_ellipsoid_is_somiglianas(double degrees, double gravity) {
        assertThat(at(degrees, 0)).isCloseTo(gravity, within(6e-10));
    }

    // The series of the Geodetic Reference System 1980 (Moritz, 2000, from memory; read in published programs): another
    // ellipsoid, 0.14 mGal heavier, hence 2e-6.
    @ParameterizedTest
    @ValueSource(doubles = {0, 15, 30, 45, 60, 75, 90})
    void gravity_agrees_with_the_series_of_the_geodetic_reference_system(double degrees) {
        double square = Math.pow(Math.sin(Math.toRadians(degrees)), 2);
        double series = 9.7803267715
                * (1
                        + square
                                * (0.0052790414
                                        + square * (0.0000232718 + square * (0.0000001262 + square * 0.0000000007))));

        assertThat(at(degrees, 0)).isCloseTo(series, within(2e-6));
    }

    // A published manual's example of the Taylor series for WGS 84: 5000 m at 55° gives 9.7997, to its last digit.
    @Test
    void gravity_at_five_kilometres_is_the_published_example() {
        assertThat(at(55, 5000)).isCloseTo(9.7997, within(0.00005));
    }

    // The free-air gradient in published programs: 3.0835e-6 to 3.086e-6 a metre; at the equator 3.0877e-6.
    @ParameterizedTest
    @ValueSource(doubles = {0, 30, 52, 90})
    void a_metre_up_takes_three_parts_in_ten_million(double degrees) {
        assertThat((at(degrees, 0) - at(degrees, 100)) / 100).isBetween(3.083e-6, 3.0878e-6);
    }

    // Beckett, 8th ed. 1903, p. 39: L = 39.1156 (1 - 0.0027 cos 2φ) in; his pendulum is in vacuum at sea level and his
    // ellipsoid a little flatter, which is 0.004 in between equator and pole.
    @ParameterizedTest
    @ValueSource(doubles = {0, 20, 45, 51.5, 70, 90})
    void the_seconds_pendulum_follows_becketts_rule(double degrees) {
        double inches = 39.1156 * (1 - 0.0027 * Math.cos(2 * Math.toRadians(degrees)));

        assertThat(at(degrees, 0) / Math.PI / Math.PI / 0.0254).isCloseTo(inches, within(0.004));
    }

    // Beckett, p. 39: a London pendulum at the equator loses 2¼ minutes a day (to the printed quarter).
    @Test
    void a_london_pendulum_at_the_equator_loses_two_minutes_and_a_quarter() {
        assertThat(DailyRate.ofGravities(at(51.5, 0), at(0, 0)) / -60).isCloseTo(2.25, within(0.125));
    }

    @ParameterizedTest
    @CsvSource({"90.1, 0", "-91, 0", "NaN, 0", "0, 10001", "0, -10001", "0, NaN"})
    void a_place_that_is_none_is_refused(double degrees, double height) {
        assertThatIllegalArgumentException().isThrownBy(() -> at(degrees, height));
    }

    private static double at(double degrees, double height) {
        return NormalGravity.at(Math.toRadians(degrees), height);
    }
}
