// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormatException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A value, or a band from the least to the most, such as {@code 0.15-0.35} or {@code 0.05-0.1 mm}.
 *
 * @param low the least
 * @param high the most
 */
record QuantitySpan(Quantity low, Quantity high) {
    /** A hyphen with something before it parts two values; one in front is a sign. */
    private static final Pattern SPAN = Pattern.compile("(.*[^\\s-])\\s*-\\s*([^-]+)");

    private static final Pattern BARE = Pattern.compile("[0-9.]+");
    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("[0-9.]+(.*)");

    static QuantitySpan parse(Dimension dimension, String text) {
        try {
            Matcher span = SPAN.matcher(text.strip());
            if (!span.matches()) {
                Quantity single = Quantity.parse(dimension, text);
                return new QuantitySpan(single, single);
            }
            Quantity high = Quantity.parse(dimension, span.group(2));
            return new QuantitySpan(Quantity.parse(dimension, low(span.group(1), span.group(2))), high);
        } catch (QuantityFormatException unreadable) {
            throw new TypeConversionException(unreadable.getMessage());
        }
    }

    /** The unit may be written once, after the most. */
    private static String low(String low, String high) {
        Matcher unit = NUMBER_AND_UNIT.matcher(high);
        return BARE.matcher(low).matches() && unit.matches() ? low + unit.group(1) : low;
    }

    double middle() {
        return (low.si() + high.si()) / 2;
    }

    String text() {
        return low.equals(high) ? low.text() : low.text() + " - " + high.text();
    }

    /** Reads coefficients. */
    static final class OfNumbers implements ITypeConverter<QuantitySpan> {
        @Override
        public QuantitySpan convert(String text) {
            return parse(Dimension.NUMBER, text);
        }
    }

    /** Reads lengths. */
    static final class OfLengths implements ITypeConverter<QuantitySpan> {
        @Override
        public QuantitySpan convert(String text) {
            return parse(Dimension.LENGTH, text);
        }
    }

    /** Reads one length. */
    static final class Length implements ITypeConverter<Quantity> {
        @Override
        public Quantity convert(String text) {
            return single(Dimension.LENGTH, text);
        }
    }

    /** Reads one angle. */
    static final class Angle implements ITypeConverter<Quantity> {
        @Override
        public Quantity convert(String text) {
            return single(Dimension.ANGLE, text);
        }
    }

    private static Quantity single(Dimension dimension, String text) {
        try {
            return Quantity.parse(dimension, text);
        } catch (QuantityFormatException unreadable) {
            throw new TypeConversionException(unreadable.getMessage());
        }
    }
}
