// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MalformedQuantityTest {
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
            LENGTH; ``;             it holds no number
            LENGTH; -;              it holds no number
            LENGTH; m;              a number was expected at "m"
            LENGTH; e5 m;           a number was expected at "e5 m"
            LENGTH; --5 m;          a number was expected at "-5 m"
            LENGTH; NaN;            a number was expected at "NaN"
            LENGTH; 1.25;           the unit is missing
            LENGTH; 0;              the unit is missing
            LENGTH; 5 ft 6;         the unit is missing
            LENGTH; 1.25 furlongs;  the unit "furlongs" is not known
            LENGTH; 5 MM;           the unit "MM" is not known
            LENGTH; 5 mx;           the unit "mx" is not known
            LENGTH; 5 m/s;          the unit "m/s" is not known
            LENGTH; 5 × 3 m;        the unit "×" is not known
            LENGTH; 1-1/2 in;       the unit "-" is not known
            LENGTH; 1,5 m;          a comma could be a decimal sign or could part thousands, so it is not read
            LENGTH; 1,000 m;        a comma could be a decimal sign or could part thousands, so it is not read
            LENGTH; 1,000,000 mm;   a comma could be a decimal sign or could part thousands, so it is not read
            LENGTH; 1.000,5 m;      a number has one decimal point and nothing between its thousands
            LENGTH; 1.2.3 m;        a number has one decimal point and nothing between its thousands
            LENGTH; 5. m;           a decimal point must have a digit after it
            LENGTH; 1 000 m;        two numbers stand side by side without a unit between them
            LENGTH; 5 6 m;          two numbers stand side by side without a unit between them
            LENGTH; ½½ m;           two numbers stand side by side without a unit between them
            LENGTH; 1/0 in;         a fraction must not be over zero
            LENGTH; 1 5/4 in;       the fraction of a mixed number must be less than one
            LENGTH; 6 in 5 ft;      its parts must go from the larger unit to the smaller, each once
            LENGTH; 1 m 2 m;        its parts must go from the larger unit to the smaller, each once
            LENGTH; 5½ ft 6 in;     only its last part may hold a fraction
            LENGTH; 5 ft -6 in;     the unit "ft -" is not known
            LENGTH; 1e31 m;         its power of ten must lie from -30 to 30
            LENGTH; 1e999999999 m;  its power of ten must lie from -30 to 30
            LENGTH; 1e-31 m;        its power of ten must lie from -30 to 30
            MASS;   9 pounds;       the unit "pounds" is not known
            TIME;   8 m;            the unit "m" is not known
            ANGLE;  2 in;           the unit "in" is not known
            FORCE;  5 N m;          the unit "N m" is not known
            FORCE;  1 kgf 2 gf;     it is written as one number with one unit
            TORQUE; 5 N;            the unit "N" is not known
            DENSITY; 1 g/cm;        the unit "g/cm" is not known
            STRESS; 50 mPa;         the unit "mPa" is not known
            NUMBER; 5 m;            the unit "m" is not known
            NUMBER; 5 % 3;          it is written as one number with one unit
            """)
    void a_malformed_text_is_refused_with_its_value_and_the_rule(Dimension dimension, String text, String rule) {
        assertThatThrownBy(() -> Quantity.parse(dimension, text))
                .isInstanceOf(QuantityFormatException.class)
                .hasMessageStartingWith("\"%s\" is not %s: %s. Write ".formatted(text, dimension.noun(), rule))
                .hasMessageEndingWith("\".")
                .hasMessageNotContaining("\n");
    }

    @Test
    void the_message_names_the_known_units_and_mends_the_example() {
        assertThatThrownBy(() -> Quantity.parse(Dimension.LENGTH, "1.25 furlongs"))
                .hasMessage("\"1.25 furlongs\" is not a length: the unit \"furlongs\" is not known. "
                        + "Write it with one of µm, mm, cm, in, ft, m, for example \"1.25 m\".");
    }

    @Test
    void a_decimal_comma_is_answered_with_the_same_number_and_a_point() {
        assertThatThrownBy(() -> Quantity.parse(Dimension.LENGTH, "1,5 m"))
                .hasMessageEndingWith(
                        "Write the decimal sign as a point and leave thousands unparted, " + "for example \"1.5 m\".");
    }

    @Test
    void hostile_lengths_are_refused_before_any_arithmetic() {
        String digits = "9".repeat(10_000) + " m";
        String manyDigits = "9".repeat(61) + " m";

        assertThatThrownBy(() -> Quantity.parse(Dimension.LENGTH, digits))
                .isInstanceOf(QuantityFormatException.class)
                .hasMessageStartingWith("\"" + "9".repeat(48)
                        + "…\" is not a length: a quantity has at most 300 characters " + "and this has 10002.");
        assertThatThrownBy(() -> Quantity.parse(Dimension.LENGTH, manyDigits))
                .hasMessageContaining("a number may have at most 60 digits");
        assertThat(Quantity.parse(Dimension.LENGTH, "9".repeat(60) + " m").text())
                .hasSize(62);
    }

    @Test
    void a_line_break_in_the_value_leaves_the_message_on_one_line() {
        assertThatThrownBy(() -> Quantity.parse(Dimension.LENGTH, "5\nq\u0000q"))
                .hasMessageStartingWith("\"5 q q\" is not a length")
                .hasMessageNotContaining("\n");
    }

    @Test
    void random_text_is_read_or_refused_and_nothing_else() {
        boolean full = "full".equals(System.getProperty("drumfall.samples"));
        SplittableRandom random = new SplittableRandom(1896);
        List<Dimension> dimensions = List.of(Dimension.values());
        String alphabet = "0123456789 .,/-+eE½¼'\"°%µmcknNftidhlboz·³g3rasPpwek";
        for (int sample = 0; sample < (full ? 1_000_000 : 20_000); sample++) {
            StringBuilder text = new StringBuilder();
            int length = random.nextInt(12);
            random.ints(length, 0, alphabet.length()).forEach(index -> text.append(alphabet.charAt(index)));
            Dimension dimension = dimensions.get(random.nextInt(dimensions.size()));

            readOrRefuse(dimension, text.toString());
        }
    }

    private static void readOrRefuse(Dimension dimension, String text) {
        try {
            assertThat(Quantity.parse(dimension, text).text()).isEqualTo(text);
        } catch (QuantityFormatException refusal) {
            assertThat(refusal).hasMessageStartingWith("\"" + text + "\" is not");
        }
    }

    @Test
    void a_computed_value_that_cannot_be_written_is_refused() {
        QuantityFormatException refusal =
                catchThrowableOfType(QuantityFormatException.class, () -> Quantity.ofSi(Dimension.LENGTH, Double.NaN));

        assertThat(refusal).hasMessage("\"NaN\" is not a length: it is not finite. Check what it was computed from.");
        assertThatThrownBy(() -> Quantity.ofSi(Dimension.LENGTH, 1e-300)).hasMessageContaining("more than 60 digits");
    }
}
