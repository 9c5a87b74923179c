// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormat;
import drumfall.solver.quantity.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** Figures of a pendulum as people read them. */
final class PendulumTexts {
    private static final int DIGITS = 5;
    private static final int BOUND_DIGITS = 4;
    private static final MathContext SHOWN = new MathContext(12);

    private final QuantityFormat format;

    PendulumTexts(UnitSystem system) {
        this.format = QuantityFormat.in(system).withSignificantDigits(DIGITS);
    }

    String figure(Dimension dimension, double si) {
        return format.format(quantity(dimension, si));
    }

    /** One figure, or two with a word between where they differ. */
    String span(Dimension dimension, double low, double high) {
        return span(figure(dimension, low), figure(dimension, high));
    }

    static String span(String low, String high) {
        return low.equals(high) ? low : Phrases.phrase("pendulum.span", low, high);
    }

    /** Seconds a day with two decimals and a sign. */
    static String daily(double seconds) {
        return String.format(Locale.ROOT, "%+.2f", seconds);
    }

    /** Millionths of an SI unit, four digits. */
    static String micro(double si) {
        return plain(si * 1e6);
    }

    static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }

    static String plain(double value) {
        return new BigDecimal(value).round(new MathContext(BOUND_DIGITS)).toPlainString();
    }

    /** An angle that is surely not less. */
    static String above(double angle) {
        return bound().roundingUp().format(quantity(Dimension.ANGLE, Math.nextUp(angle * (1 + 1e-9))));
    }

    /** An angle that is surely less. */
    static String below(double angle) {
        return bound().roundingDown().format(quantity(Dimension.ANGLE, angle * (1 - 1e-4)));
    }

    private static QuantityFormat bound() {
        return QuantityFormat.in(UnitSystem.METRIC).withSignificantDigits(BOUND_DIGITS);
    }

    private static Quantity quantity(Dimension dimension, double si) {
        return Quantity.ofSi(dimension, new BigDecimal(si).round(SHOWN).doubleValue());
    }
}
