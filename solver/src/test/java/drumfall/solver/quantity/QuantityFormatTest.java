// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityFormatTest {
    private static final QuantityFormat METRIC = QuantityFormat.in(UnitSystem.METRIC);
    private static final QuantityFormat IMPERIAL = QuantityFormat.in(UnitSystem.IMPERIAL);

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
            LENGTH;  1.25 m;         1.25 m;       4.10 ft
            LENGTH;  12.3456 mm;     12.3 mm;      0.486 in
            LENGTH;  999.9 mm;       1.00 m;       3.28 ft
            LENGTH;  50 µm;          50 µm;        0.00197 in
            LENGTH;  1 in;           25.4 mm;      1 in
            LENGTH;  0 m;            0 mm;         0 in
            LENGTH;  -12.3456 mm;    -12.3 mm;     -0.486 in
            MASS;    9 lb 4 oz;      4.20 kg;      9.25 lb
            MASS;    5 g;            5 g;          0.176 oz
            TIME;    8 d;            8 d;          8 d
            TIME;    30 h;           30 h;         30 h
            TIME;    7.4996 d;       7.50 d;       7.50 d
            TIME;    90 s;           1.5 min;      1.5 min
            ANGLE;   2° 30';         2.5°;         2.5°
            FORCE;   2 lbf;          8.90 N;       2 lbf
            TORQUE;  1 ozf in;       7.06 N mm;    1 ozf in
            AREA;    0.0375 m2;      375 cm²;      58.1 in²
            DENSITY; 1240 kg/m3;     1.24 g/cm³;   0.0448 lb/in³
            STRESS;  50 MPa;         50 MPa;       7250 psi
            STRESS;  3500 MPa;       3.5 GPa;      508000 psi
            NUMBER;  123456;         123456;       123456
            NUMBER;  6.93147;        6.93;         6.93
            NUMBER;  1/3;            0.333;        0.333
            """)
    void three_significant_digits_in_a_unit_that_suits(
            Dimension dimension, String text, String metric, String imperial) {
        Quantity quantity = Quantity.parse(dimension, text);

        assertThat(METRIC.format(quantity)).isEqualTo(metric);
        assertThat(IMPERIAL.format(quantity)).isEqualTo(imperial);
    }

    @ParameterizedTest
    @CsvSource({"7.4999999 d, 7.49 d", "7.5 d, 7.5 d", "47.999 h, 47.9 h", "-7.491 d, -7.50 d", "59.99 s, 59.9 s"})
    void a_duration_rounded_down_is_never_shown_longer_than_it_is(String text, String shown) {
        assertThat(METRIC.roundingDown().format(Quantity.parse(Dimension.TIME, text)))
                .isEqualTo(shown);
    }

    @Test
    void a_weight_rounded_up_is_never_shown_lighter_than_it_is() {
        assertThat(METRIC.roundingUp().format(Quantity.parse(Dimension.MASS, "3.501 kg")))
                .isEqualTo("3.51 kg");
    }

    @ParameterizedTest
    @EnumSource
    void what_is_shown_rounded_down_parses_to_no_more_than_the_value(Dimension dimension) {
        SplittableRandom random = new SplittableRandom(1851);
        for (int sample = 0; sample < samples(); sample++) {
            Quantity quantity = randomQuantity(random, dimension);
            String down = METRIC.roundingDown().format(quantity);
            String up = IMPERIAL.roundingUp().format(quantity);

            assertThat(Quantity.parse(dimension, down)).isLessThanOrEqualTo(quantity);
            assertThat(Quantity.parse(dimension, up)).isGreaterThanOrEqualTo(quantity);
        }
    }

    @ParameterizedTest
    @EnumSource
    void the_exact_text_parses_to_the_same_exact_value(Dimension dimension) {
        SplittableRandom random = new SplittableRandom(1675);
        for (int sample = 0; sample < samples(); sample++) {
            Quantity quantity = randomQuantity(random, dimension);

            for (UnitSystem system : UnitSystem.values()) {
                String text = QuantityFormat.in(system).exactText(quantity);
                assertThat(Quantity.parse(dimension, text).sameValueAs(quantity))
                        .isTrue();
            }
            assertThat(Quantity.parse(dimension, quantity.text())).isEqualTo(quantity);
        }
    }

    private static int samples() {
        return "full".equals(System.getProperty("drumfall.samples")) ? 50_000 : 500;
    }

    private static Quantity randomQuantity(SplittableRandom random, Dimension dimension) {
        long numerator = random.nextLong(-1_000_000_000L, 1_000_000_000L);
        long denominator = random.nextLong(1, random.nextBoolean() ? 1_000 : 1_000_000_000L);
        return Quantity.of(dimension, BigFraction.of(numerator, random.nextBoolean() ? denominator : -denominator));
    }

    @ParameterizedTest
    @CsvSource({
        "LENGTH, 0.0125, 0.0125 m",
        "ANGLE, 0.35, 0.35 rad",
        "NUMBER, 0.1, 0.1",
        "TIME, 1.0E7, 10000000 s",
        "TORQUE, -2.5E-4, -0.00025 N m",
    })
    void a_computed_double_keeps_its_shortest_decimal(Dimension dimension, double value, String text) {
        Quantity quantity = Quantity.ofSi(dimension, value);

        assertThat(quantity.text()).isEqualTo(text);
        assertThat(quantity.si()).isEqualTo(value);
    }

    @Test
    void millimetres_are_written_as_millimetres() {
        assertThat(Quantity.ofMillimetres(12.5)).isEqualTo(Quantity.parse(Dimension.LENGTH, "12.5 mm"));
        assertThat(Quantity.of(BigFraction.of(5, 3), Dimension.LENGTH.unit("in")))
                .isEqualTo(Quantity.parse(Dimension.LENGTH, "5/3 in"));
    }

    @Test
    void a_count_of_digits_out_of_range_is_refused() {
        assertThatThrownBy(() -> METRIC.withSignificantDigits(0))
                .hasMessage("The significantDigits (0) of the quantity format must lie from 1 to 15. "
                        + "Maybe keep the usual 3.");
        assertThatThrownBy(() -> new QuantityFormat(UnitSystem.METRIC, 3, RoundingMode.UNNECESSARY))
                .hasMessageContaining("UNNECESSARY");
        assertThat(METRIC.withSignificantDigits(5).format(Quantity.parse(Dimension.LENGTH, "12.34567 mm")))
                .isEqualTo("12.346 mm");
    }
}
