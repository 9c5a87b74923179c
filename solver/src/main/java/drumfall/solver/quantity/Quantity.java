// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import java.math.BigDecimal;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A measured value, held exactly and with the text in which it was written.
 *
 * <p>Two quantities are equal when dimension, value and text agree, so that a design file read back compares equal and a
 * retyped entry counts as a change; {@link #sameValueAs} and the order disregard the text. The order is therefore not
 * consistent with {@code equals}, just as {@link BigDecimal}'s is not.
 */
public final class Quantity implements Comparable<Quantity> {
    private final Dimension dimension;
    private final BigFraction exact;
    private final String typed;
    private final double si;

    private Quantity(Dimension dimension, BigFraction exact, String typed) {
        this.dimension = dimension;
        this.exact = signAbove(exact);
        this.typed = typed;
        this.si = dimension == Dimension.ANGLE ? exactIn("rad").doubleValue() : this.exact.doubleValue();
    }

    /**
     * The quantity a text stands for.
     *
     * @param typed an optional sign, then one number and unit, or for lengths, masses, times and angles several parts
     *     from the larger unit to the smaller, such as "5 ft 6 1/2 in"; at most 300 characters
     * @throws QuantityFormatException if the text cannot be read in one way only
     */
    public static Quantity parse(Dimension dimension, String typed) {
        return new Quantity(dimension, QuantityReader.read(dimension, typed), typed);
    }

    /**
     * The quantity of an exact value.
     *
     * @param exact the value in {@link Dimension#baseUnit()}, degrees for angles
     * @throws QuantityFormatException if the value takes more than 60 digits to write
     */
    public static Quantity of(Dimension dimension, BigFraction exact) {
        return of(exact, dimension.baseUnit());
    }

    /**
     * An exact amount of a unit.
     *
     * @throws QuantityFormatException if the amount takes more than 60 digits to write
     */
    public static Quantity of(BigFraction amount, Unit unit) {
        BigFraction exact = amount.multiply(unit.factor());
        return new Quantity(unit.dimension(), exact, QuantityWriter.exactText(signAbove(exact), unit));
    }

    /**
     * The quantity of a computed value; its exact value is the shortest decimal that names the double.
     *
     * @param value finite, in the SI unit, radians for angles
     * @throws QuantityFormatException if the value is not finite or takes more than 60 digits to write
     */
    public static Quantity ofSi(Dimension dimension, double value) {
        Unit unit = dimension == Dimension.NUMBER ? dimension.baseUnit() : dimension.unit(dimension.siSymbol());
        return of(shortestDecimal(dimension, value), unit);
    }

    /**
     * The length of a computed number of millimetres.
     *
     * @param millimetres finite
     * @throws QuantityFormatException if the value is not finite or takes more than 60 digits to write
     */
    public static Quantity ofMillimetres(double millimetres) {
        return of(shortestDecimal(Dimension.LENGTH, millimetres), Dimension.LENGTH.unit("mm"));
    }

    /** The fraction type may carry its sign in either half; only one of the two is written as people write it. */
    private static BigFraction signAbove(BigFraction fraction) {
        boolean below = fraction.getDenominator().signum() < 0;
        return below
                ? BigFraction.of(
                        fraction.getNumerator().negate(),
                        fraction.getDenominator().negate())
                : fraction;
    }

    private static BigFraction shortestDecimal(Dimension dimension, double value) {
        if (!Double.isFinite(value)) {
            throw QuantityFormatException.refused(
                    Double.toString(value), dimension, "it is not finite", "Check what it was computed from.");
        }
        return ExactFactors.of(BigDecimal.valueOf(value));
    }

    /** What is measured. */
    public Dimension dimension() {
        return dimension;
    }

    /** The exact value in {@link Dimension#baseUnit()}; degrees for angles. */
    public BigFraction exact() {
        return exact;
    }

    /** The text exactly as it was typed, or the canonical text of a computed value. */
    public String text() {
        return typed;
    }

    /** The value in the SI unit, rounded once to the nearest double; radians for angles. */
    public double si() {
        return si;
    }

    /**
     * The value counted in a unit, rounded once to the nearest double.
     *
     * @throws QuantityFormatException if the dimension knows no such unit
     */
    public double in(String unit) {
        return exactIn(unit).doubleValue();
    }

    /**
     * The exact value counted in a unit; for radians exact up to the 39 decimals kept of π.
     *
     * @throws QuantityFormatException if the dimension knows no such unit
     */
    public BigFraction exactIn(String unit) {
        return exact.divide(dimension.unit(unit).factor());
    }

    /** Whether both measure the same thing to the same exact value, whatever their texts. */
    public boolean sameValueAs(Quantity other) {
        return dimension == other.dimension && exact.equals(other.exact);
    }

    /**
     * Compares exact values.
     *
     * @throws IllegalArgumentException if the dimensions differ
     */
    @Override
    public int compareTo(Quantity other) {
        if (dimension != other.dimension) {
            throw new IllegalArgumentException(
                    "The quantity (%s) is %s and cannot be compared with \"%s\", %s. Maybe compare within one dimension."
                            .formatted(typed, dimension.noun(), other.typed, other.dimension.noun()));
        }
        return exact.compareTo(other.exact);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Quantity other && sameValueAs(other) && typed.equals(other.typed);
    }

    @Override
    public int hashCode() {
        return Objects.hash(dimension, exact, typed);
    }

    /** The text, so that messages read well. */
    @Override
    public String toString() {
        return typed;
    }
}
