// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.power;

import java.util.Locale;

/** Round steps for the marks of a scale. */
final class ChartScale {
    private static final double[] ROUND = {1, 2, 5, 10};

    private ChartScale() {}

    /** The smallest of 1, 2 and 5 times a power of ten that divides a span into a number of steps at most. */
    static double step(double span, int steps) {
        if (!(span > 0) || Double.isInfinite(span)) {
            return 1;
        }
        double ten = Math.pow(10, Math.floor(Math.log10(span / steps)));
        for (double round : ROUND) {
            if (round * ten * steps >= span * (1 - 1e-9)) {
                return round * ten;
            }
        }
        return 10 * ten;
    }

    /** A mark with as many decimals as its step needs. */
    static String words(double mark, double step) {
        int decimals = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
        return String.format(Locale.ROOT, "%." + decimals + "f", mark);
    }
}
