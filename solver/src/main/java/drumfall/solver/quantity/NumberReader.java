// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads one unsigned number: a whole number, a decimal, a power-of-ten form, a fraction or a mixed number. */
final class NumberReader {
    private final TextCursor cursor;

    NumberReader(TextCursor cursor) {
        this.cursor = cursor;
    }

    BigFraction read() {
        int start = cursor.position();
        String whole = cursor.takeDigits();
        refuseComma(start);
        boolean decimal = cursor.peek() == '.' || (!whole.isEmpty() && atExponent());
        if (decimal) {
            return decimal(whole);
        }
        if (whole.isEmpty()) {
            throw cursor.refuse(missingNumber());
        }
        return wholeOrFraction(whole);
    }

    private String missingNumber() {
        return cursor.atEnd()
                ? "it holds no number"
                : "a number was expected at \"%s\"".formatted(QuantityFormatException.shown(cursor.rest()));
    }

    private void refuseComma(int start) {
        if (cursor.peek() != ',') {
            return;
        }
        String rule = "a comma could be a decimal sign or could part thousands, so it is not read";
        String whole = cursor.since(start);
        cursor.take(",");
        String decimals = cursor.takeDigits();
        boolean single = !whole.isEmpty() && !decimals.isEmpty() && decimals.length() != 3 && cursor.peek() != ',';
        String example = single ? whole + "." + decimals + cursor.rest() : "1234.5" + cursor.rest();
        throw cursor.refuse(
                rule,
                "Write the decimal sign as a point and leave thousands unparted, for example \"%s\"."
                        .formatted(QuantityFormatException.shown(example)));
    }

    private boolean atExponent() {
        boolean marker = cursor.peek() == 'e' || cursor.peek() == 'E';
        boolean signed = cursor.peek(1) == '-' || cursor.peek(1) == '+';
        return marker && TextCursor.isDigit(cursor.peek(signed ? 2 : 1));
    }

    private BigFraction decimal(String whole) {
        String decimals = "";
        if (cursor.take(".")) {
            decimals = cursor.takeDigits();
            requireDecimals(decimals);
        }
        int exponent = exponent();
        BigInteger digits = integer(whole + decimals);
        return ExactFactors.of(new BigDecimal(digits, decimals.length() - exponent));
    }

    private void requireDecimals(String decimals) {
        if (decimals.isEmpty()) {
            throw cursor.refuse("a decimal point must have a digit after it");
        }
        if (cursor.peek() == '.' || cursor.peek() == ',') {
            throw cursor.refuse("a number has one decimal point and nothing between its thousands");
        }
    }

    private int exponent() {
        if (!atExponent()) {
            return 0;
        }
        cursor.takeWhile(character -> character == 'e' || character == 'E');
        boolean negative = cursor.take("-");
        cursor.take("+");
        BigInteger magnitude = integer(cursor.takeDigits());
        if (magnitude.compareTo(BigInteger.valueOf(QuantityLimits.EXPONENT)) > 0) {
            throw cursor.refuse("its power of ten must lie from -%1$d to %1$d".formatted(QuantityLimits.EXPONENT));
        }
        return negative ? -magnitude.intValue() : magnitude.intValue();
    }

    private BigFraction wholeOrFraction(String whole) {
        int end = cursor.position();
        cursor.skipBlank();
        if (cursor.peek() == '/') {
            return fraction(whole, end);
        }
        boolean spaced = cursor.position() > end;
        if (spaced && cursor.atDigit()) {
            return mixed(whole);
        }
        cursor.returnTo(end);
        return BigFraction.of(integer(whole));
    }

    private BigFraction fraction(String numerator, int end) {
        cursor.take("/");
        cursor.skipBlank();
        String denominator = cursor.takeDigits();
        if (denominator.isEmpty()) {
            cursor.returnTo(end);
            return BigFraction.of(integer(numerator));
        }
        BigInteger below = integer(denominator);
        if (below.signum() == 0) {
            throw cursor.refuse("a fraction must not be over zero");
        }
        return BigFraction.of(integer(numerator), below);
    }

    private BigFraction mixed(String whole) {
        String numerator = cursor.takeDigits();
        cursor.skipBlank();
        if (cursor.peek() != '/') {
            throw cursor.refuse("two numbers stand side by side without a unit between them");
        }
        BigFraction part = fraction(numerator, cursor.position());
        if (part.compareTo(BigFraction.ONE) >= 0) {
            throw cursor.refuse("the fraction of a mixed number must be less than one");
        }
        return part.add(integer(whole));
    }

    private BigInteger integer(String digits) {
        if (digits.length() > QuantityLimits.DIGITS) {
            throw cursor.refuse("a number may have at most %d digits".formatted(QuantityLimits.DIGITS));
        }
        return new BigInteger(digits);
    }
}
