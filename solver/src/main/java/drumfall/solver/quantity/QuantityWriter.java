// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Writes an exact value so that reading it again gives the same value to the last digit. */
final class QuantityWriter {
    /** A number of this many bits or fewer is cheap to try as a decimal; {@link QuantityLimits#DIGITS} need 200. */
    private static final int BITS = 256;

    private QuantityWriter() {}

    /**
     * The exact value counted in a unit, as a decimal where one ends within the digit limit and as a fraction otherwise.
     *
     * @throws QuantityFormatException if not even the fraction fits the digit limit
     */
    static String exactText(BigFraction exact, Unit unit) {
        return unit.print(number(exact.divide(unit.factor()), unit.dimension()));
    }

    private static String number(BigFraction amount, Dimension dimension) {
        BigInteger numerator = amount.getNumerator();
        BigInteger denominator = amount.getDenominator();
        if (Math.max(numerator.bitLength(), denominator.bitLength()) > BITS) {
            throw tooLong(dimension);
        }
        if (endsAsDecimal(denominator)) {
            String decimal = new BigDecimal(numerator)
                    .divide(new BigDecimal(denominator))
                    .stripTrailingZeros()
                    .toPlainString();
            if (digits(decimal) <= QuantityLimits.DIGITS) {
                return decimal;
            }
        }
        if (digits(numerator.toString()) > QuantityLimits.DIGITS
                || digits(denominator.toString()) > QuantityLimits.DIGITS) {
            throw tooLong(dimension);
        }
        return numerator + (denominator.equals(BigInteger.ONE) ? "" : "/" + denominator);
    }

    private static boolean endsAsDecimal(BigInteger denominator) {
        BigInteger rest = denominator.shiftRight(denominator.getLowestSetBit());
        BigInteger five = BigInteger.valueOf(5);
        while (rest.mod(five).signum() == 0) {
            rest = rest.divide(five);
        }
        return rest.equals(BigInteger.ONE);
    }

    private static long digits(String number) {
        return number.chars().filter(TextCursor::isDigit).count();
    }

    private static QuantityFormatException tooLong(Dimension dimension) {
        String rule = "it takes more than %d digits to write".formatted(QuantityLimits.DIGITS);
        return QuantityFormatException.refused("the computed value", dimension, rule, "Round it before storing it.");
    }
}
