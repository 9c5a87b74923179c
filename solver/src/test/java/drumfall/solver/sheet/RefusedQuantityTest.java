// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormatException;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RefusedQuantityTest {
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
            LENGTH; ``;             it holds no number
            LENGTH; 1.25;           the unit is missing
            LENGTH; 1.25 furlongs;  the unit "furlongs" is not known
            LENGTH; 1,000.5 m;      a comma could be a decimal sign or could part thousands, so it is not read
            LENGTH; x. Write y;     a number was expected at "x. Write y"
            LENGTH; 1" is not a length: 2; the unit "" is not a length:" is not known
            LENGTH; 1e31 m;         its power of ten must lie from -30 to 30
            NUMBER; 5 m;            the unit "m" is not known
            TORQUE; 5 N;            the unit "N" is not known
            """)
    void rule_and_remedy_are_those_of_the_message(Dimension dimension, String typed, String rule) {
        QuantityFormatException refusal =
                Assertions.catchThrowableOfType(QuantityFormatException.class, () -> Quantity.parse(dimension, typed));
        RefusedQuantity refused = RefusedQuantity.of(refusal, dimension, typed);
        assertThat(refused.rule()).isEqualTo(rule);
        assertThat(refused.remedy()).startsWith("write ").doesNotEndWith(".");
    }
}
