// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The size of a tooth: pitch diameter over tooth count, as a whole number of nanometres.
 *
 * <p>Nanometres hold every published module and most diametral pitches exactly, and keep centre distances in whole
 * numbers. The word stands apart from a software module.
 *
 * @param nanometres the module in nm, from 50 &micro;m to 100 mm
 */
public record ToothModule(int nanometres) implements Comparable<ToothModule> {
    /** Smaller teeth are beyond any printer. */
    private static final int LEAST = 50_000;

    /** Larger teeth are beyond any clock. */
    private static final int MOST = 100_000_000;

    private static final BigFraction NANOMETRES_PER_METRE = BigFraction.of(1_000_000_000);

    /**
     * Checks the size.
     *
     * @throws IllegalArgumentException if the module is below 0.05 mm or above 100 mm
     */
    public ToothModule {
        if (nanometres < LEAST || nanometres > MOST) {
            throw new IllegalArgumentException(
                    "The module (%d nm) must be from 0.05 mm to 100 mm.".formatted(nanometres));
        }
    }

    /**
     * The module of a length.
     *
     * @param metres the module in metres, exact
     * @throws IllegalArgumentException if it is not a whole number of nanometres or out of range
     */
    public static ToothModule ofMetres(BigFraction metres) {
        BigFraction nanometres = metres.multiply(NANOMETRES_PER_METRE);
        if (nanometres.getDenominator().bitLength() != 1
                || nanometres.getNumerator().bitLength() > 31) {
            throw new IllegalArgumentException(
                    "The module (%s m) must be a whole number of nanometres from 0.05 mm to 100 mm. Maybe write it as a decimal."
                            .formatted(metres));
        }
        return new ToothModule(nanometres.intValue());
    }

    /**
     * The module of a decimal in millimetres.
     *
     * @param millimetres for example {@code "1.25"}
     * @throws ArithmeticException if it is not a whole number of nanometres
     */
    public static ToothModule ofMillimetres(String millimetres) {
        return new ToothModule(new BigDecimal(millimetres).movePointRight(6).intValueExact());
    }

    /** The module in millimetres. */
    public double millimetres() {
        return nanometres / 1e6;
    }

    /** The module in metres. */
    public double metres() {
        return nanometres / 1e9;
    }

    @Override
    public int compareTo(ToothModule other) {
        return Integer.compare(nanometres, other.nanometres);
    }

    /** The module in millimetres without trailing zeros, for example {@code 1.25}. */
    @Override
    public String toString() {
        return BigDecimal.valueOf(nanometres, 6).stripTrailingZeros().toPlainString();
    }
}
