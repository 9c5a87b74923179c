// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import java.util.stream.Collectors;

/** Says in one plain line which value cannot be read, which rule it breaks and what to write instead. */
public final class QuantityFormatException extends IllegalArgumentException {
    /** Characters of a refused value that a message repeats; longer values are cut. */
    private static final int SHOWN = 48;

    private QuantityFormatException(String message) {
        super(message);
    }

    static QuantityFormatException refused(String value, Dimension dimension, String rule, String remedy) {
        return new QuantityFormatException(
                "\"%s\" is not %s: %s. %s".formatted(shown(value), dimension.noun(), rule, remedy));
    }

    static QuantityFormatException unknownUnit(String spelling, Dimension dimension) {
        return refused(spelling, dimension, "there is no unit of that name", remedy(dimension, "1.25"));
    }

    /** The advice that names every unit and closes with an example that is itself a valid value. */
    static String remedy(Dimension dimension, String number) {
        String example = dimension.baseUnit().print(number);
        if (dimension == Dimension.NUMBER) {
            return "Write a plain number or a percentage, for example \"%s\".".formatted(example);
        }
        String symbols = dimension.units().stream().map(Unit::symbol).collect(Collectors.joining(", "));
        return "Write it with one of %s, for example \"%s\".".formatted(symbols, example);
    }

    /** The value on one line, cut where it is too long to help. */
    static String shown(String value) {
        String head = value.codePointCount(0, value.length()) > SHOWN
                ? value.substring(0, value.offsetByCodePoints(0, SHOWN)) + "…"
                : value;
        return head.replaceAll("\\p{Cntrl}", " ");
    }
}
