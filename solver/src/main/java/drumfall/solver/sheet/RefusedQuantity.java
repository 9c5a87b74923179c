// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.QuantityFormatException;
import java.util.Locale;

/**
 * The parts of a refused quantity's message, which reads: value "is not" dimension, rule, full stop, remedy.
 *
 * @param rule which rule the text breaks
 * @param remedy what to write instead, as an order in the middle of a sentence
 */
record RefusedQuantity(String rule, String remedy) {
    private static final String REMEDY_OPENS = ". Write ";

    /** Characters of the value that the message surely repeats before its own words begin. */
    private static final int VALUE_SHOWN = 48;

    static RefusedQuantity of(QuantityFormatException refusal, Dimension dimension, String typed) {
        String message = refusal.getMessage();
        String opening = "\" is not " + dimension.noun() + ": ";
        int start = message.indexOf(opening, Math.min(typed.length(), VALUE_SHOWN)) + opening.length();
        int end = message.lastIndexOf(REMEDY_OPENS);
        return end < start
                ? new RefusedQuantity(sentencePart(message), "write " + dimension.noun())
                : new RefusedQuantity(message.substring(start, end), sentencePart(message.substring(end + 2)));
    }

    private static String sentencePart(String sentence) {
        String open = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
        return open.substring(0, 1).toLowerCase(Locale.ROOT) + open.substring(1);
    }
}
