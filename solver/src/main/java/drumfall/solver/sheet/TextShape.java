// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Free text on one line: a name, a material. */
record TextShape() implements Shape {
    /** The longest text; a name that fills three lines of a table is no name. */
    static final int LONGEST = 200;

    private static final Set<Integer> UNPRINTABLE =
            Set.of((int) Character.CONTROL, (int) Character.SURROGATE, (int) Character.LINE_SEPARATOR, (int)
                    Character.PARAGRAPH_SEPARATOR);

    private static final String PATTERN =
            "^[^\\u0000-\\u001F\\u007F-\\u009F\\u2028\\u2029]*\\S[^\\u0000-\\u001F\\u007F-\\u009F\\u2028\\u2029]*$";

    @Override
    public Optional<Object> read(JsonNode node, Place place, Findings findings) {
        if (!node.isTextual()) {
            findings.wrongType(place, node, this);
            return Optional.empty();
        }
        Optional<String> broken = ruleBrokenBy(node.textValue());
        broken.ifPresent(rule -> findings.add(place, node, rule, advice()));
        return broken.isPresent() ? Optional.empty() : Optional.of(node.textValue());
    }

    private static Optional<String> ruleBrokenBy(String text) {
        if (text.isBlank()) {
            return Optional.of("the text must not be empty");
        }
        if (text.codePointCount(0, text.length()) > LONGEST) {
            return Optional.of("the text must have at most %d characters".formatted(LONGEST));
        }
        boolean printable = text.codePoints().map(Character::getType).noneMatch(UNPRINTABLE::contains);
        return printable
                ? Optional.empty()
                : Optional.of("the text must hold no control characters and stand on one line");
    }

    @Override
    public JsonNode write(Object value) {
        return TextNode.valueOf((String) value);
    }

    @Override
    public String noun() {
        return "text in quotes";
    }

    @Override
    public String advice() {
        return "write a text of 1 to %d characters in quotes".formatted(LONGEST);
    }

    @Override
    public ObjectNode schema() {
        return JsonText.object()
                .put("type", "string")
                .put("minLength", 1)
                .put("maxLength", LONGEST)
                .put("pattern", PATTERN);
    }

    @Override
    public void listFields(Place place, Optional<String> optionalAt, List<SheetField> fields) {
        fields.add(SheetField.plain(place, optionalAt, FieldKind.TEXT, List.of()));
    }
}
