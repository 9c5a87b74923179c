// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Closed forms of the textbook's beam table: Shigley's Mechanical Engineering Design, table A-9, from memory. */
class BentRodTest {
    private static final double SPAN = 0.07;
    private static final double MODULUS = 200e9;
    private static final double DIAMETER = 0.003;
    private static final double STIFFNESS = MODULUS * Math.PI * Math.pow(DIAMETER, 4) / 64;

    // Case 5, load in the middle: M = F l / 4, y = F l³ / (48 E I), slope at the ends F l² / (16 E I). Rounding only.
    @Test
    void a_load_in_the_middle_bends_as_the_table_says() {
        BentRod rod = rod(PointForce.at(SPAN / 2, 10, 1));

        assertThat(rod.worstMoment()).isCloseTo(10 * SPAN / 4, withinPercentage(1e-9));
        assertThat(rod.deflection(SPAN / 2))
                .isCloseTo(10 * SPAN * SPAN * SPAN / (48 * STIFFNESS), withinPercentage(1e-9));
        assertThat(rod.slope(0)).isCloseTo(10 * SPAN * SPAN / (16 * STIFFNESS), withinPercentage(1e-9));
        assertThat(rod.slope(SPAN / 2)).isCloseTo(0, within(1e-15));
    }

    // Case 6, load at a with b = l - a: M = F a b / l, y at the load F a² b² / (3 E I l), slope there F a b (b - a) /
    // (3 E I l).
    @ParameterizedTest
    @CsvSource({"0.01", "0.02", "0.05", "0.065"})
    void a_load_anywhere_between_bends_as_the_table_says(double place) {
        double beyond = SPAN - place;
        BentRod rod = rod(PointForce.at(place, 10, -2));

        assertThat(rod.worstMoment()).isCloseTo(10 * place * beyond / SPAN, withinPercentage(1e-9));
        assertThat(rod.deflection(place))
                .isCloseTo(10 * place * place * beyond * beyond / (3 * STIFFNESS * SPAN), withinPercentage(1e-9));
        assertThat(rod.slope(place))
                .isCloseTo(
                        Math.abs(10 * place * beyond * (beyond - place) / (3 * STIFFNESS * SPAN)),
                        withinPercentage(1e-9));
    }

    // Case 10, load at a distance c beyond a support: M = F c, y at the load F c² (l + c) / (3 E I). On either side.
    @ParameterizedTest
    @CsvSource({"0.085", "-0.015"})
    void an_overhung_load_bends_as_the_table_says(double place) {
        BentRod rod = rod(PointForce.weight(place, 10));

        assertThat(rod.worstMoment()).isCloseTo(10 * 0.015, withinPercentage(1e-9));
        assertThat(rod.deflection(place))
                .isCloseTo(10 * 0.015 * 0.015 * 0.085 / (3 * STIFFNESS), withinPercentage(1e-9));
        assertThat(rod.deflection(0)).isCloseTo(0, within(1e-15));
        assertThat(rod.deflection(SPAN)).isCloseTo(0, within(1e-15));
    }

    // Forces at right angles bend in planes of their own: 3 and 4 newtons bend like 5 of them.
    @Test
    void forces_at_right_angles_add_as_vectors() {
        double both =
                rod(new PointForce(0.03, 3, 0), new PointForce(0.03, 0, 4)).worstMoment();

        assertThat(both).isCloseTo(rod(new PointForce(0.03, 5, 0)).worstMoment(), within(1e-15));
    }

    // 32 M / (π d³): 1 N m on 3 mm makes 377.3 MPa. Rounding of the figure here.
    @Test
    void stress_is_the_moment_over_the_sections_modulus() {
        BentRod rod = new BentRod(4, 0.003, MODULUS, List.of(PointForce.weight(2, 1)));

        assertThat(rod.worstStress()).isCloseTo(377.26e6, withinPercentage(0.01));
    }

    @Test
    void a_rod_without_a_size_is_refused() {
        assertThatThrownBy(() -> new BentRod(0, 0.003, MODULUS, List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must all be more than 0");
    }

    private static BentRod rod(PointForce... forces) {
        return new BentRod(SPAN, DIAMETER, MODULUS, List.of(forces));
    }
}
