// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormat;
import drumfall.solver.quantity.UnitSystem;
import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Figures in the maker's units, three significant digits.
 *
 * @param units which units
 */
record Figures(UnitSystem units) {
    private static final double MICROWATTS = 1e6;
    private static final double MANY = 1000;
    private static final BigFraction SECONDS_PER_HOUR = BigFraction.of(3600);

    Figure of(Dimension dimension, double si) {
        return formatted(QuantityFormat.in(units), dimension, si);
    }

    Figure length(double metres) {
        return of(Dimension.LENGTH, metres);
    }

    Figure torque(double newtonMetres) {
        return of(Dimension.TORQUE, newtonMetres);
    }

    /** A weight that is needed; never shown smaller than it is. */
    Figure weight(double kilograms) {
        return formatted(QuantityFormat.in(units).roundingUp(), Dimension.MASS, kilograms);
    }

    /** A duration; never shown longer than it is. */
    Figure duration(BigFraction hours) {
        double seconds = hours.multiply(SECONDS_PER_HOUR).doubleValue();
        return formatted(QuantityFormat.in(units).roundingDown(), Dimension.TIME, seconds);
    }

    /** A power, in watts whatever the system: the trade has no other unit for so little. */
    Figure power(double watts) {
        double micro = watts * MICROWATTS;
        return micro < MANY ? new Figure(number(micro), "µW") : new Figure(number(micro / MANY), "mW");
    }

    /** A plain number; whole ones are not rounded. */
    String number(double value) {
        return of(Dimension.NUMBER, value).number();
    }

    /** Beats an hour, to a tenth; whole ones without a decimal. */
    String beats(double value) {
        double tenths = Math.rint(value * 10) / 10;
        return BigDecimal.valueOf(tenths).stripTrailingZeros().toPlainString();
    }

    /** A range, its unit written once if both ends share it. */
    static String range(Figure from, Figure to) {
        return TrainText.of("range", StripSpot.withoutSharedUnit(from, to).text(), to.text());
    }

    /** What the maker typed, shown in the chosen units and exactly. */
    Figure typed(Quantity quantity) {
        return Figure.of(QuantityFormat.in(units).format(quantity));
    }

    /** A length that is chosen, not computed, shown exactly. */
    Figure exactLength(BigFraction metres) {
        Quantity quantity = Quantity.of(Dimension.LENGTH, metres);
        return Figure.of(
                units == UnitSystem.METRIC
                        ? QuantityFormat.in(units).exactText(quantity)
                        : QuantityFormat.in(units).format(quantity));
    }

    private static Figure formatted(QuantityFormat format, Dimension dimension, double si) {
        return Double.isFinite(si)
                ? Figure.of(format.format(Quantity.ofSi(dimension, si)).replace('-', '−'))
                : Figure.NONE;
    }
}
