// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class PiBoundsTest {
    private static final int TERMS = 90;

    // Machin's formula (1706), π = 16 arctan(1/5) - 4 arctan(1/239), in exact fractions. The terms of an arctangent
    // alternate and shrink, so an even number of them lies below it and an odd number above; 90 terms leave 5^-180.
    @Test
    void pi_by_machins_formula_lies_between_the_bounds() {
        BigFraction below = arctangent(5, TERMS)
                .multiply(16)
                .subtract(arctangent(239, TERMS + 1).multiply(4));
        BigFraction above = arctangent(5, TERMS + 1)
                .multiply(16)
                .subtract(arctangent(239, TERMS).multiply(4));

        assertThat(PiBounds.BELOW).isLessThan(below);
        assertThat(below).isLessThan(above);
        assertThat(above).isLessThan(PiBounds.ABOVE);
    }

    @Test
    void the_bounds_are_one_unit_of_the_fiftieth_decimal_apart() {
        assertThat(PiBounds.ABOVE.subtract(PiBounds.BELOW))
                .isEqualTo(BigFraction.of(BigInteger.ONE, BigInteger.TEN.pow(50)));
    }

    private static BigFraction arctangent(int inverse, int terms) {
        BigFraction sum = BigFraction.ZERO;
        for (int i = 0; i < terms; i++) {
            BigInteger denominator =
                    BigInteger.valueOf(inverse).pow(2 * i + 1).multiply(BigInteger.valueOf(2L * i + 1));
            BigFraction term = BigFraction.of(BigInteger.ONE, denominator);
            sum = i % 2 == 0 ? sum.add(term) : sum.subtract(term);
        }
        return sum;
    }
}
