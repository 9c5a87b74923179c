// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import drumfall.solver.quantity.UnitSystem.Step;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Shows quantities to people: a unit chosen by magnitude and a stated number of significant digits.
 *
 * <p>Whole plain numbers are counts and are never rounded. Trailing zeros appear only where digits were dropped, so "7.50
 * d" was rounded and "7.5 d" is exact.
 *
 * @param system the units to choose from
 * @param significantDigits 1 to 15
 * @param rounding where dropped digits go; {@link RoundingMode#FLOOR} never shows more than there is
 */
public record QuantityFormat(UnitSystem system, int significantDigits, RoundingMode rounding) {
    private static final int MOST_DIGITS = 15;

    /**
     * Checks the number of digits.
     *
     * @throws IllegalArgumentException if {@code significantDigits} is out of range
     */
    public QuantityFormat {
        if (significantDigits < 1 || significantDigits > MOST_DIGITS) {
            throw new IllegalArgumentException(
                    "The significantDigits (%d) of the quantity format must lie from 1 to %d. Maybe keep the usual 3."
                            .formatted(significantDigits, MOST_DIGITS));
        }
        if (rounding == RoundingMode.UNNECESSARY) {
            throw new IllegalArgumentException(
                    "The rounding (UNNECESSARY) of the quantity format must allow rounding. Maybe use exactText.");
        }
    }

    /** Three significant digits, rounded to the nearest. */
    public static QuantityFormat in(UnitSystem system) {
        return new QuantityFormat(system, 3, RoundingMode.HALF_EVEN);
    }

    /** The same with another number of significant digits, 1 to 15. */
    public QuantityFormat withSignificantDigits(int digits) {
        return new QuantityFormat(system, digits, rounding);
    }

    /** The same but never showing more than there is: for durations and strengths. */
    public QuantityFormat roundingDown() {
        return new QuantityFormat(system, significantDigits, RoundingMode.FLOOR);
    }

    /** The same but never showing less than there is: for weights needed. */
    public QuantityFormat roundingUp() {
        return new QuantityFormat(system, significantDigits, RoundingMode.CEILING);
    }

    /** The quantity in the largest unit that suits it, rounded. */
    public String format(Quantity quantity) {
        Unit unit = unitFor(quantity);
        return unit.print(rounded(quantity, unit).toPlainString());
    }

    /**
     * The quantity in the unit {@link #format} chooses, unrounded; it parses back to the same exact value.
     *
     * @throws QuantityFormatException if the value takes more than 60 digits to write
     */
    public String exactText(Quantity quantity) {
        return QuantityWriter.exactText(quantity.exact(), unitFor(quantity));
    }

    /** The magnitude is judged after rounding, so 999.9 mm is shown as 1.00 m and not as 1000 mm. */
    private Unit unitFor(Quantity quantity) {
        if (quantity.exact().isZero()) {
            return system.unitOfZero(quantity.dimension());
        }
        List<Step> steps = system.stepsFor(quantity.dimension());
        return steps.stream()
                .filter(step -> rounded(quantity, step.unit()).abs().compareTo(BigDecimal.valueOf(step.least())) >= 0)
                .findFirst()
                .orElseThrow()
                .unit();
    }

    private BigDecimal rounded(Quantity quantity, Unit unit) {
        BigFraction amount = quantity.exact().divide(unit.factor());
        BigDecimal numerator = new BigDecimal(amount.getNumerator());
        BigDecimal denominator = new BigDecimal(amount.getDenominator());
        boolean count = quantity.dimension() == Dimension.NUMBER
                && amount.getDenominator().bitLength() == 1;
        if (count) {
            return numerator;
        }
        BigDecimal shown = numerator.divide(denominator, new MathContext(significantDigits, rounding));
        boolean nothingDropped = shown.multiply(denominator).compareTo(numerator) == 0;
        return nothingDropped ? shown.stripTrailingZeros() : padded(shown);
    }

    private BigDecimal padded(BigDecimal shown) {
        int missing = significantDigits - shown.precision();
        return missing > 0 ? shown.setScale(shown.scale() + missing) : shown;
    }
}
