// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.flank;

import java.util.Locale;

/**
 * A tooth was asked for that geometry or the form does not allow.
 *
 * <p>The message names the subject, its value, the limit and the nearest value that works, which a caller can also read
 * as numbers.
 */
public final class ToothLimitException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** Four decimals are shown, a value within a millionth of the last one counting as that one. */
    private static final double SHOWN = 1e4;

    private static final double HAIR = 1e-6;

    private final String subject;
    private final double value;
    private final double nearest;

    private ToothLimitException(String subject, double value, double nearest, String message) {
        super(message);
        this.subject = subject;
        this.value = value;
        this.nearest = nearest;
    }

    /**
     * A value that is too small.
     *
     * @param subject what was asked for and of which part, such as {@code leafCount of a lantern pinion}
     * @param value the refused value
     * @param least the smallest value that works
     * @param unit the unit as printed after the limit, empty for a pure number
     */
    public static ToothLimitException below(String subject, double value, double least, String unit) {
        return of(subject, value, "at least", least, Math.ceil(least * SHOWN - HAIR) / SHOWN, unit);
    }

    /**
     * A value that is too large.
     *
     * @param subject what was asked for and of which part
     * @param value the refused value
     * @param most the largest value that works
     * @param unit the unit as printed after the limit, empty for a pure number
     */
    public static ToothLimitException above(String subject, double value, double most, String unit) {
        return of(subject, value, "at most", most, Math.floor(most * SHOWN + HAIR) / SHOWN, unit);
    }

    /** The shown limit is rounded to the side that works. */
    private static ToothLimitException of(
            String subject, double value, String rule, double nearest, double rounded, String unit) {
        String shown = number(rounded) + (unit.isEmpty() ? "" : " " + unit);
        String message = "The " + subject + " (" + number(value) + ") must be " + rule + " " + shown + ". Maybe take "
                + shown + ".";
        return new ToothLimitException(subject, value, nearest, message);
    }

    private static String number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : String.format(Locale.ROOT, "%.4f", value);
    }

    /** What was asked for, and of which part. */
    public String subject() {
        return subject;
    }

    /** The refused value. */
    public double value() {
        return value;
    }

    /** The nearest value that works. */
    public double nearest() {
        return nearest;
    }
}
