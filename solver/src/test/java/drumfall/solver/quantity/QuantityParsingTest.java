// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityParsingTest {
    // Worked by hand from the exact factors: an inch is 254/10000 m, a pound 45359237/100000000 kg.
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
            LENGTH; 1.25 m;             5/4
            LENGTH; 1250mm;             5/4
            LENGTH; .5 m;               1/2
            LENGTH; +12 cm;             3/25
            LENGTH; -3 mm;              -3/1000
            LENGTH; − 3 mm;             -3/1000
            LENGTH; 1e-3 m;             1/1000
            LENGTH; 2.5E+2 mm;          1/4
            LENGTH; 400 µm;             1/2500
            LENGTH; 400 μm;             1/2500
            LENGTH; 400 um;             1/2500
            LENGTH; 3/32 in;            762/320000
            LENGTH; 3 / 32 in;          762/320000
            LENGTH; 6 1/2 in;           1651/10000
            LENGTH; 6½ in;              1651/10000
            LENGTH; ½";                 127/10000
            LENGTH; 5 ft 6 1/2 in;      16891/10000
            LENGTH; 5ft6½in;            16891/10000
            LENGTH; 5' 6 ½";            16891/10000
            LENGTH; 5′ 6.5″;            16891/10000
            LENGTH; -5 ft 6 in;         -4191/2500
            LENGTH; 1 m 20 cm 5 mm;     241/200
            MASS;   9 1/4 lb;           1678291769/400000000
            MASS;   9 lb 4 oz;          1678291769/400000000
            MASS;   3.5 kg;             7/2
            MASS;   1 kg 250 g;         5/4
            TIME;   8 d;                691200
            TIME;   8 d 12 h;           734400
            TIME;   1 week 1 day;       691200
            TIME;   30 hours;           108000
            TIME;   1 min 90 s;         150
            ANGLE;  20°;                20
            ANGLE;  20 deg;             20
            ANGLE;  2 deg 30 min;       5/2
            ANGLE;  2° 30';             5/2
            ANGLE;  2°30’;              5/2
            ANGLE;  90 arcmin;          3/2
            FORCE;  1 kgf;              980665/100000
            FORCE;  12.5N;              25/2
            TORQUE; 5 N m;              5
            TORQUE; 5 N·m;              5
            TORQUE; 5 N⋅mm;             1/200
            TORQUE; 5 mN m;             1/200
            TORQUE; 100 gf cm;          980665/100000000
            AREA;   50 cm2;             1/200
            AREA;   50 cm²;             1/200
            AREA;   2 m²;               2
            DENSITY; 1.24 g/cm3;        1240
            DENSITY; 1.24 g/cm³;        1240
            DENSITY; 7850 kg/m3;        7850
            STRESS; 50 MPa;             50000000
            STRESS; 3.5 GPa;            3500000000
            NUMBER; 12;                 12
            NUMBER; 90 %;               9/10
            NUMBER; 1/3;                1/3
            NUMBER; 6.931;              6931/1000
            """)
    void a_text_has_one_exact_value(Dimension dimension, String text, String value) {
        assertThat(Quantity.parse(dimension, text).exact()).isEqualTo(BigFraction.parse(value.replace("/", " / ")));
    }

    @ParameterizedTest
    @ValueSource(strings = {" 5  ft\t6 1/2 in ", "5\u00a0ft 6½ in", "5' 6 1/2\"", "66.5 in"})
    void the_text_is_kept_exactly_as_typed(String text) {
        Quantity quantity = Quantity.parse(Dimension.LENGTH, text);

        assertThat(quantity.text()).isEqualTo(text);
        assertThat(quantity.exact()).isEqualTo(BigFraction.of(16_891, 10_000));
        assertThat(Quantity.parse(Dimension.LENGTH, quantity.text())).isEqualTo(quantity);
    }

    @Test
    void the_same_value_in_other_words_is_the_same_value_but_not_equal() {
        Quantity metres = Quantity.parse(Dimension.LENGTH, "1 m");
        Quantity centimetres = Quantity.parse(Dimension.LENGTH, "100 cm");

        assertThat(metres.sameValueAs(centimetres)).isTrue();
        assertThat(metres).isEqualByComparingTo(centimetres).isNotEqualTo(centimetres);
        assertThat(metres).hasSameHashCodeAs(Quantity.parse(Dimension.LENGTH, "1 m"));
        assertThat(metres.sameValueAs(Quantity.parse(Dimension.NUMBER, "1"))).isFalse();
    }

    @Test
    void order_is_exact_where_doubles_would_tie() {
        Quantity third = Quantity.parse(Dimension.NUMBER, "1/3");
        Quantity nearlyThird = Quantity.parse(Dimension.NUMBER, "0.333333333333333333333333333333");

        assertThat(third.si()).isEqualTo(nearlyThird.si());
        assertThat(third).isGreaterThan(nearlyThird);
    }

    @Test
    void quantities_of_two_dimensions_have_no_order() {
        Quantity length = Quantity.parse(Dimension.LENGTH, "1 m");
        Quantity mass = Quantity.parse(Dimension.MASS, "2 kg");

        assertThatThrownBy(() -> length.compareTo(mass))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The quantity (1 m) is a length and cannot be compared with \"2 kg\", a mass. "
                        + "Maybe compare within one dimension.");
    }

    @ParameterizedTest
    @CsvSource({"LENGTH, 1.25 m, mm, 1250", "LENGTH, 1 ft, in, 12", "TIME, 1 week, d, 7", "MASS, 1 lb, g, 453.59237"})
    void a_quantity_counts_in_any_unit_of_its_dimension(Dimension dimension, String text, String unit, double amount) {
        assertThat(Quantity.parse(dimension, text).in(unit)).isEqualTo(amount);
    }
}
