// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers in drawings: a tenth of a micrometre, a full stop, no exponent, whatever the locale. */
final class Numbers {
    private static final int PLACES = 4;

    private Numbers() {}

    static String text(double millimetres) {
        BigDecimal rounded = BigDecimal.valueOf(millimetres)
                .setScale(PLACES, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
