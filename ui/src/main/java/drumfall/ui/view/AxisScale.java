// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/**
 * A scale from a lowest to a highest value along some pixels, with round marks.
 *
 * @param low value at the beginning
 * @param high value at the end, more than low
 * @param from pixel at the beginning
 * @param to pixel at the end
 */
record AxisScale(double low, double high, double from, double to) {
    /** Takes off what binary arithmetic adds to a round mark. */
    private static final MathContext TEN_DIGITS = new MathContext(10);

    private static final double MARGIN = 0.06;

    /** A scale that holds all values with a little air at both ends. */
    static AxisScale of(List<Double> values, double from, double to) {
        double least = values.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double most = values.stream().mapToDouble(Double::doubleValue).max().orElse(1);
        double span = most > least ? most - least : Math.max(Math.abs(most), 1e-9) * 0.1;
        return new AxisScale(least - span * MARGIN, most + span * MARGIN, from, to);
    }

    double pixel(double value) {
        return from + (value - low) / (high - low) * (to - from);
    }

    /** Round values along the scale, about as many as asked for. */
    List<Double> marks(int about, double unit) {
        double step = roundStep((high - low) / unit / Math.max(1, about));
        List<Double> marks = new ArrayList<>();
        for (long i = (long) Math.ceil(low / unit / step); i * step * unit <= high; i++) {
            marks.add(BigDecimal.valueOf(i * step * unit).round(TEN_DIGITS).doubleValue());
        }
        return marks;
    }

    private static double roundStep(double rough) {
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double share = rough / power;
        double round = share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10;
        return round * power;
    }
}
