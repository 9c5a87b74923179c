// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.quantity;

import java.text.Normalizer;
import java.util.function.IntPredicate;

/** A place in a quantity's text, after look-alike characters were brought to one form. */
final class TextCursor {
    /** No character up to here looks like another one or stands for several. */
    private static final int LAST_OF_TYPEWRITER = 0x7E;

    private final Dimension dimension;
    private final String typed;
    private final String text;
    private int position;

    TextCursor(Dimension dimension, String typed) {
        this.dimension = dimension;
        this.typed = typed;
        this.text = normalised(typed);
    }

    /** Spaces of every kind become one blank, and typographic signs their typewriter form; "6½" becomes "6 1/2". */
    private static String normalised(String typed) {
        StringBuilder plain = new StringBuilder();
        typed.codePoints().forEach(character -> plain.append(normalised(character)));
        return plain.toString().replaceAll(" +", " ").strip();
    }

    private static String normalised(int character) {
        if (Character.isWhitespace(character) || Character.isSpaceChar(character)) {
            return " ";
        }
        return switch (character) {
            case '−' -> "-";
            case '′', '’' -> "'";
            case '″', '”' -> "\"";
            case 'μ' -> "µ";
            case '⋅', '∙' -> "·";
            case '⁄' -> "/";
            default ->
                character <= LAST_OF_TYPEWRITER ? Character.toString(character) : vulgarFractionOrSame(character);
        };
    }

    private static String vulgarFractionOrSame(int character) {
        String same = Character.toString(character);
        String spelledOut = Normalizer.normalize(same, Normalizer.Form.NFKD);
        return spelledOut.matches("[0-9]+⁄[0-9]+") ? " " + spelledOut.replace('⁄', '/') + " " : same;
    }

    boolean atEnd() {
        return position == text.length();
    }

    /** The current character, or NUL at the end. */
    char peek() {
        return peek(0);
    }

    char peek(int ahead) {
        return position + ahead < text.length() ? text.charAt(position + ahead) : '\0';
    }

    boolean atDigit() {
        return isDigit(peek());
    }

    static boolean isDigit(int character) {
        return character >= '0' && character <= '9';
    }

    int position() {
        return position;
    }

    void returnTo(int earlier) {
        position = earlier;
    }

    /** The text from an earlier place up to here. */
    String since(int earlier) {
        return text.substring(earlier, position);
    }

    String rest() {
        return text.substring(position);
    }

    void skipBlank() {
        take(" ");
    }

    boolean take(String expected) {
        boolean found = text.startsWith(expected, position);
        position += found ? expected.length() : 0;
        return found;
    }

    String takeWhile(IntPredicate wanted) {
        int start = position;
        while (!atEnd() && wanted.test(peek())) {
            position++;
        }
        return since(start);
    }

    String takeDigits() {
        return takeWhile(TextCursor::isDigit);
    }

    QuantityFormatException refuse(String rule, String remedy) {
        return QuantityFormatException.refused(typed, dimension, rule, remedy);
    }

    QuantityFormatException refuse(String rule) {
        return refuse(rule, QuantityFormatException.remedy(dimension, "1.25"));
    }
}
