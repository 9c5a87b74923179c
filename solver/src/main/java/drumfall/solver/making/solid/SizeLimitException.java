// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.solid;

import java.util.Locale;

/**
 * A part was asked for with a size that cannot be made.
 *
 * <p>The message names the size, its value, the limit with its reason and the nearest value that works, lengths in
 * millimetres.
 */
public final class SizeLimitException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private static final double MILLIMETRES = 1e3;

    /** Three decimals are shown; a limit within a millionth of a millimetre of one counts as that one. */
    private static final double SHOWN = 1e3;

    private static final double HAIR = 1e-6;

    private final double nearest;

    private SizeLimitException(String message, double nearest) {
        super(message);
        this.nearest = nearest;
    }

    /**
     * Refuses a length that is too small.
     *
     * @param subject what was asked for and of which part, such as {@code rim of a wheel}
     * @param value the length, m
     * @param least the smallest length that works, m
     * @param reason why, in a few words
     * @throws SizeLimitException if the length is smaller or no number
     */
    public static void atLeast(String subject, double value, double least, String reason) {
        // Sums of decimal sizes miss each other in the last digits; a picometre is nothing to a printer.
        if (!(value >= least - 1e-12)) {
            throw of(subject, value, "at least", Math.ceil(least * MILLIMETRES * SHOWN - HAIR) / SHOWN, reason);
        }
    }

    /**
     * Refuses a length that is too large.
     *
     * @param subject what was asked for and of which part
     * @param value the length, m
     * @param most the largest length that works, m
     * @param reason why, in a few words
     * @throws SizeLimitException if the length is larger or no number
     */
    public static void atMost(String subject, double value, double most, String reason) {
        if (!(value <= most + 1e-12)) {
            throw of(subject, value, "at most", Math.floor(most * MILLIMETRES * SHOWN + HAIR) / SHOWN, reason);
        }
    }

    /**
     * Refuses a count out of its range.
     *
     * @param subject what is counted and of which part
     * @param value the count
     * @param fewest the smallest count that works
     * @param most the largest count that works
     * @throws SizeLimitException if the count is outside
     */
    public static void count(String subject, int value, int fewest, int most) {
        if (value < fewest || value > most) {
            int nearest = Math.max(fewest, Math.min(most, value));
            throw new SizeLimitException(
                    "The " + subject + " (" + value + ") must be from " + fewest + " to " + most + ". Maybe take "
                            + nearest + ".",
                    nearest);
        }
    }

    private static SizeLimitException of(String subject, double value, String rule, double shown, String reason) {
        String limit = number(shown) + " mm";
        return new SizeLimitException(
                "The " + subject + " (" + number(value * MILLIMETRES) + " mm) must be " + rule + " " + limit + ", "
                        + reason + ". Maybe take " + limit + ".",
                shown / MILLIMETRES);
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value);
        return text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
    }

    /** The nearest value that works: m for a length, otherwise a count. */
    public double nearest() {
        return nearest;
    }
}
