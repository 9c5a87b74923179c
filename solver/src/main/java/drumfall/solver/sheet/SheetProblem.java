// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import drumfall.solver.quantity.Quantity;

/**
 * One thing wrong with a sheet, as the maker reads it.
 *
 * @param pointer JSON pointer (RFC 6901) of the place in the sheet
 * @param value what stands there, as written; "nothing" if it is absent
 * @param rule which rule it breaks
 * @param remedy what to try
 */
public record SheetProblem(String pointer, String value, String rule, String remedy) {
    /** The value of a place where nothing stands. */
    public static final String NOTHING = "nothing";

    /** Characters of a value that a problem repeats; enough for any sensible entry. */
    private static final int SHOWN = 60;

    /** Characters of a pointer that a sentence repeats; the pointer itself stays whole. */
    private static final int POINTER_SHOWN = 200;

    /**
     * A problem with a quantity.
     *
     * @param pointer where it stands
     * @param value the quantity, shown as typed
     * @param rule which rule it breaks
     * @param remedy what to try
     */
    public static SheetProblem of(String pointer, Quantity value, String rule, String remedy) {
        return new SheetProblem(pointer, shown(TextNode.valueOf(value.text())), rule, remedy);
    }

    /** A node as it is written, cut where it is too long to help. */
    static String shown(JsonNode node) {
        return shortened(node.toString());
    }

    /** A text on one line, cut where it is too long to help. */
    static String shortened(String text) {
        return shortened(text, SHOWN);
    }

    private static String shortened(String text, int most) {
        boolean whole = text.codePointCount(0, text.length()) <= most;
        String head = whole ? text : text.substring(0, text.offsetByCodePoints(0, most)) + "…";
        return head.replaceAll("[\\p{Cntrl}\\u0085\\u2028\\u2029]", " ");
    }

    /** The problem in one sentence. */
    public String sentence() {
        String place = pointer.isEmpty() ? "the top" : shortened(pointer, POINTER_SHOWN);
        return "At %s, %s: %s; %s.".formatted(place, value, rule, remedy);
    }
}
