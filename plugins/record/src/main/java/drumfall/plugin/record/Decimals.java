// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.record;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Decimals for people: rounded at a stated place, without trailing zeros or exponents. */
final class Decimals {
    /** A tenth of a micrometre, far below what any printer holds. */
    private static final int MILLIMETRE_PLACES = 4;

    /** A milligram. */
    private static final int GRAM_PLACES = 3;

    private Decimals() {}

    /**
     * A length.
     *
     * @param metres finite
     * @return mm
     */
    static BigDecimal millimetres(double metres) {
        return rounded(BigDecimal.valueOf(metres).movePointRight(3), MILLIMETRE_PLACES);
    }

    /**
     * A mass.
     *
     * @param micrograms exact
     * @return g
     */
    static BigDecimal grams(long micrograms) {
        return rounded(BigDecimal.valueOf(micrograms, 6), GRAM_PLACES);
    }

    private static BigDecimal rounded(BigDecimal value, int places) {
        return plain(value.setScale(places, RoundingMode.HALF_EVEN));
    }

    /** The same value without trailing zeros. */
    static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
