// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One of several words: the constants of an enum that are not withheld, in lower case with hyphens.
 *
 * @param type the enum
 */
record ChoiceShape(Class<?> type) implements Shape {
    private static String word(Object constant) {
        return SheetWriter.word((Enum<?>) constant);
    }

    private List<String> words() {
        return Arrays.stream(type.getEnumConstants())
                .filter(constant -> withheld(constant).isEmpty())
                .map(ChoiceShape::word)
                .toList();
    }

    private static Optional<Withheld> withheld(Object constant) {
        return Withheld.Mark.of((Enum<?>) constant);
    }

    @Override
    public Optional<Object> read(JsonNode node, Place place, Findings findings) {
        if (!node.isTextual()) {
            findings.wrongType(place, node, this);
            return Optional.empty();
        }
        Optional<Object> constant = Arrays.stream(type.getEnumConstants())
                .filter(candidate -> word(candidate).equals(node.textValue()))
                .findFirst()
                .map(Object.class::cast);
        if (constant.isEmpty()) {
            findings.add(place, node, "the word is not known here", remedyFor(node.textValue()));
        }
        Optional<Withheld> withheld = constant.flatMap(ChoiceShape::withheld);
        withheld.ifPresent(mark -> findings.add(place, node, mark.rule(), mark.remedy()));
        return withheld.isPresent() ? Optional.empty() : constant;
    }

    private String remedyFor(String written) {
        List<String> words = words();
        return NearestName.of(written, words)
                .filter(word -> words.size() > 1)
                .map(word -> "write \"%s\" if that was meant, or else %s".formatted(word, choice()))
                .orElse(advice());
    }

    private String choice() {
        List<String> words = words();
        String quoted = words.stream().map(word -> '"' + word + '"').collect(Collectors.joining(", "));
        return words.size() == 1 ? quoted : "one of " + quoted;
    }

    @Override
    public JsonNode write(Object value) {
        return TextNode.valueOf(word(value));
    }

    @Override
    public String noun() {
        return "a word in quotes";
    }

    @Override
    public String advice() {
        return "write " + choice();
    }

    @Override
    public ObjectNode schema() {
        ObjectNode schema = JsonText.object();
        words().forEach(schema.putArray("enum")::add);
        return schema;
    }

    @Override
    public void listFields(Place place, Optional<String> optionalAt, List<SheetField> fields) {
        fields.add(SheetField.plain(place, optionalAt, FieldKind.CHOICE, words()));
    }
}
