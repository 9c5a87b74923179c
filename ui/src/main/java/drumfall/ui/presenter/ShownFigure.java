// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormat;
import drumfall.solver.quantity.UnitSystem;
import drumfall.ui.wording.FigureWording;

/**
 * A figure as it is shown: its number and, set lighter, its unit.
 *
 * @param number the digits
 * @param unit the unit; empty for plain numbers
 */
public record ShownFigure(String number, String unit) {
    /** What is shown where there is no figure. */
    public static final ShownFigure NONE = new ShownFigure("–", "");

    /** Which way a figure is rounded. */
    public enum Rounding {
        /** To the nearest. */
        NEAREST,
        /** Never more than there is, for durations. */
        DOWN,
        /** Never less than is needed, for weights. */
        UP
    }

    /**
     * A computed value to three significant digits.
     *
     * @param dimension what it measures
     * @param si SI units, radians for angles; {@link #NONE} if not finite
     * @param units which units are read
     */
    public static ShownFigure of(Dimension dimension, double si, UnitSystem units) {
        return of(dimension, si, units, Rounding.NEAREST);
    }

    /**
     * A computed value to three significant digits.
     *
     * @param dimension what it measures
     * @param si SI units, radians for angles; {@link #NONE} if not finite
     * @param units which units are read
     * @param rounding which way
     */
    public static ShownFigure of(Dimension dimension, double si, UnitSystem units, Rounding rounding) {
        return Double.isFinite(si) ? of(Quantity.ofSi(dimension, si), units, rounding) : NONE;
    }

    /**
     * A quantity to three significant digits.
     *
     * @param quantity the quantity
     * @param units which units are read
     * @param rounding which way
     */
    public static ShownFigure of(Quantity quantity, UnitSystem units, Rounding rounding) {
        QuantityFormat nearest = QuantityFormat.in(units);
        QuantityFormat format = switch (rounding) {
            case NEAREST -> nearest;
            case DOWN -> nearest.roundingDown();
            case UP -> nearest.roundingUp();
        };
        return split(format.format(quantity));
    }

    /** A share in percent, 1 for all of it. */
    static ShownFigure share(double share) {
        return split(FigureWording.percent(share));
    }

    /** A whole count. */
    public static ShownFigure count(int count) {
        return new ShownFigure(Integer.toString(count), "");
    }

    /** Number and unit of a text such as "3.91 kg". */
    static ShownFigure split(String text) {
        int end = 0;
        while (end < text.length() && "+-−.0123456789".indexOf(text.charAt(end)) >= 0) {
            end++;
        }
        return new ShownFigure(text.substring(0, end), text.substring(end).strip());
    }

    /** The same with a minus sign in place of a hyphen. */
    public ShownFigure withMinusSign() {
        return new ShownFigure(number.replace('-', '−'), unit);
    }

    /** Number and unit in one text. */
    public String text() {
        return unit.isEmpty() ? number : number + (unit.startsWith("°") ? "" : " ") + unit;
    }
}
