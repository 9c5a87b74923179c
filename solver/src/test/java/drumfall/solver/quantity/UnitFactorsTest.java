// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitFactorsTest {
    // A. Thompson, B. N. Taylor, Guide for the Use of the International System of Units, NIST SP 811 (2008), appendix
    // B.8:
    // the factors printed in bold, and footnotes 22 and 23 for the pound and the pound-force, are exact.
    @ParameterizedTest
    @CsvSource({
        "LENGTH, in, 0.0254",
        "LENGTH, ft, 0.3048",
        "AREA, in2, 0.00064516",
        "MASS, lb, 0.45359237",
        "FORCE, kgf, 9.80665",
        "FORCE, gf, 0.00980665",
        "FORCE, lbf, 4.4482216152605",
        "TIME, min, 60",
        "TIME, h, 3600",
        "TIME, d, 86400",
        "DENSITY, g/cm3, 1000",
        // A sixteenth of the pound, by definition.
        "MASS, oz, 0.028349523125",
        // SI prefixes and the seven days of the week.
        "LENGTH, µm, 0.000001",
        "LENGTH, mm, 0.001",
        "LENGTH, cm, 0.01",
        "AREA, mm2, 0.000001",
        "AREA, cm2, 0.0001",
        "MASS, g, 0.001",
        "TORQUE, N mm, 0.001",
        "STRESS, kPa, 1000",
        "STRESS, MPa, 1000000",
        "STRESS, GPa, 1000000000",
        "TIME, week, 604800",
        "NUMBER, %, 0.01",
    })
    void a_unit_has_the_exact_factor_of_its_definition(Dimension dimension, String unit, BigDecimal factor) {
        assertThat(dimension.unit(unit).factor()).isEqualTo(ExactFactors.of(factor));
        assertThat(dimension.unit(unit).exact()).isTrue();
    }

    // NIST SP 811 (2008), appendix B.8, factors rounded there to seven significant digits; ours must round to them.
    @ParameterizedTest
    @CsvSource({
        "MASS, oz, 0.02834952",
        "MASS, lb, 0.4535924",
        "FORCE, lbf, 4.448222",
        "FORCE, ozf, 0.2780139",
        "TORQUE, ozf in, 0.007061552",
        "TORQUE, lbf in, 0.1129848",
        "TORQUE, gf cm, 0.0000980665",
        "DENSITY, lb/in3, 27679.90",
        "STRESS, psi, 6894.757",
    })
    void a_derived_factor_rounds_to_the_printed_seven_digits(Dimension dimension, String unit, BigDecimal printed) {
        BigDecimal ours = dimension
                .unit(unit)
                .factor()
                .bigDecimalValue(20, RoundingMode.HALF_EVEN)
                .round(new MathContext(7));

        assertThat(ours).isEqualByComparingTo(printed);
    }

    // NIST SP 811 (2008), appendix B.8: degree 1.745 329 E-02 rad, minute 2.908 882 E-04 rad; printed to seven digits,
    // hence the half unit in the seventh.
    @ParameterizedTest
    @CsvSource({"1 deg, 1.745329e-2, 5e-9", "1', 2.908882e-4, 5e-11"})
    void an_angle_turns_into_the_printed_radians(String text, double radians, double halfUnit) {
        assertThat(Quantity.parse(Dimension.ANGLE, text).si()).isCloseTo(radians, within(halfUnit));
    }

    @ParameterizedTest
    @CsvSource({"0.5 rad, 0.5", "3.14159265358979 rad, 3.14159265358979", "1e-3 rad, 0.001"})
    void an_angle_typed_in_radians_gives_the_typed_radians_again(String text, double radians) {
        assertThat(Quantity.parse(Dimension.ANGLE, text).si()).isEqualTo(radians);
    }

    @ParameterizedTest
    @CsvSource({"1, 0.017453292519943295", "180, 3.141592653589793", "20, 0.3490658503988659"})
    void degrees_round_once_to_the_nearest_double(int degrees, double radians) {
        // The first two are the nearest doubles to π/180 and π; the third is the nearest to π/9.
        assertThat(Quantity.of(Dimension.ANGLE, BigFraction.of(degrees)).si()).isEqualTo(radians);
    }

    @Test
    void only_the_radian_is_inexact() {
        assertThat(List.of(Dimension.values()))
                .flatMap(Dimension::units)
                .filteredOn(unit -> !unit.exact())
                .extracting(Unit::symbol)
                .containsExactly("rad");
    }

    @ParameterizedTest
    @EnumSource
    void no_spelling_names_two_units_of_one_dimension(Dimension dimension) {
        assertThat(dimension.units()).flatMap(Unit::spellings).doesNotHaveDuplicates();
        assertThat(dimension.baseUnit().factor()).isEqualTo(BigFraction.ONE);
    }

    @Test
    void an_unknown_unit_is_refused_with_the_known_ones() {
        assertThatThrownBy(() -> Dimension.LENGTH.unit("furlong"))
                .isInstanceOf(QuantityFormatException.class)
                .hasMessageContainingAll("furlong", "µm, mm, cm, in, ft, m");
    }
}
