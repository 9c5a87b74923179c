// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.display;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Cycles of the sky that a clock can show, by their mean length in days of 86 400 s.
 *
 * <p>The true ones swing about the mean: a lunation may be hours longer or shorter, and a display that turns evenly cannot
 * follow.
 */
public enum KnownCycle {
    /**
     * From new moon to new moon, 29.530588853 d: the mean synodic month of the lunar theory ELP 2000, as in J. Meeus,
     * <i>Astronomical Algorithms</i> (1991), chapter on the phases of the moon, from memory.
     */
    SYNODIC_MONTH(days("29.530588853")),
    /**
     * From the moon's passage over the meridian to its next, 24 h 50.47 min; the tides follow it.
     *
     * <p>In a synodic month of {@code S} days the moon passes once less than the sun, so the lunar day is {@code S / (S - 1)}
     * days. Taken from the month, so that moon and tide of one clock agree for ever.
     */
    LUNAR_DAY(SYNODIC_MONTH.days.divide(SYNODIC_MONTH.days.subtract(1))),
    /**
     * From one passage of the equinox over the meridian to its next, 23 h 56 min 4.0905 s, as in the <i>Explanatory
     * Supplement to the Astronomical Almanac</i> (1992), from memory.
     */
    SIDEREAL_DAY(fromSeconds("86164.0905")),
    /**
     * From spring to spring, 365.2421897 d: J. Meeus and D. Savoie, "The history of the tropical year", Journal of the
     * British Astronomical Association 102 (1992), page 42, from memory.
     */
    TROPICAL_YEAR(days("365.2421897"));

    private static final int SECONDS_PER_DAY = 86_400;

    /** The fraction type cannot change, but is not marked so. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final BigFraction days;

    KnownCycle(BigFraction days) {
        this.days = days;
    }

    private static BigFraction days(String decimal) {
        BigDecimal value = new BigDecimal(decimal);
        return BigFraction.of(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
    }

    private static BigFraction fromSeconds(String decimal) {
        return days(decimal).divide(SECONDS_PER_DAY);
    }

    /** Mean length in seconds, exact. */
    public BigFraction seconds() {
        return days.multiply(SECONDS_PER_DAY);
    }
}
