// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Lengths as whole nanometres: to and from metres, and as text. */
public final class Nanometres {
    /** One millimetre. */
    public static final long MILLIMETRE = 1_000_000;

    /** One sixty-fourth of an inch: 25.4 mm / 64, exact. */
    public static final long SIXTY_FOURTH_INCH = 396_875;

    /** The longest length that is taken, 100 m; sums of many thousands stay far below the end of a {@code long}. */
    public static final long LONGEST = 100_000 * MILLIMETRE;

    private static final int DIGITS_IN_MILLIMETRE = 6;
    private static final double PER_METRE = 1e9;

    private Nanometres() {}

    /**
     * The same length in nanometres, without rounding.
     *
     * @param metres at most 100 m either way
     * @throws FitException if it is no whole number of nanometres or too long
     */
    public static long exact(BigFraction metres) {
        BigFraction length = metres.multiply(BigInteger.valueOf((long) PER_METRE));
        if (!length.getDenominator().equals(BigInteger.ONE)) {
            long nearest = Math.round(length.doubleValue());
            throw FitException.refused(
                    "value", metres + " m", "a length", "be a whole number of nanometres", "take " + text(nearest));
        }
        if (length.getNumerator().abs().compareTo(BigInteger.valueOf(LONGEST)) > 0) {
            throw FitException.refused(
                    "value", metres + " m", "a length", "be at most " + text(LONGEST), "look at its unit");
        }
        return length.getNumerator().longValueExact();
    }

    /**
     * The same length in metres, for formulas.
     *
     * @param nanometres nm
     */
    public static double metres(double nanometres) {
        return nanometres / PER_METRE;
    }

    /**
     * The length in millimetres with its unit, all digits that it has.
     *
     * @param nanometres nm
     */
    public static String text(long nanometres) {
        BigDecimal millimetres = BigDecimal.valueOf(nanometres, DIGITS_IN_MILLIMETRE);
        return (nanometres == 0 ? "0" : millimetres.stripTrailingZeros().toPlainString()) + " mm";
    }
}
