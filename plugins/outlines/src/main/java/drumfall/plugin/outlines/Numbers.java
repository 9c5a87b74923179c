// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers in drawings: a tenth of a micrometre, a full stop, no exponent, whatever the locale. */
final class Numbers {
    private static final int PLACES = 4;
    private static final int BULGE_PLACES = 9;

    private Numbers() {}

    static String text(double millimetres) {
        return text(millimetres, PLACES);
    }

    /** A bulge: an arc of 100 mm that turns by a radian moves by less than a tenth of a micrometre in its last place. */
    static String bulge(double tangent) {
        return text(tangent, BULGE_PLACES);
    }

    private static String text(double number, int places) {
        BigDecimal rounded = BigDecimal.valueOf(number)
                .setScale(places, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
