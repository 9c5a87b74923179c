// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines.draw;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers in drawings: a tenth of a micrometre, a full stop, no exponent, whatever the locale. */
public final class Numbers {
    private static final int PLACES = 4;
    private static final int BULGE_PLACES = 9;
    private static final int MICROMETRES = 3;
    private static final double NANOMETRES = 1e6;

    private Numbers() {}

    /** A length, mm. */
    public static String text(double millimetres) {
        return text(millimetres, PLACES);
    }

    /** A length of whole nanometres, in mm to the micrometre. */
    public static String micrometres(long nanometres) {
        return text(nanometres / NANOMETRES, MICROMETRES);
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
