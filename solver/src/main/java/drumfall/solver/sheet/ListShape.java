// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A list of like parts.
 *
 * @param entry shape of each entry
 * @param from fewest entries
 * @param to most entries
 */
record ListShape(Shape entry, int from, int to) implements Shape {
    @Override
    public Optional<Object> read(JsonNode node, Place place, Findings findings) {
        if (!node.isArray()) {
            findings.wrongType(place, node, this);
            return Optional.empty();
        }
        if (node.size() < from || node.size() > to) {
            String bound = node.size() < from ? "at least " + from : "at most " + to;
            findings.add(
                    place,
                    node,
                    "the list must have %s, and it has %d".formatted(entries(bound), node.size()),
                    advice());
            return Optional.empty();
        }
        List<Optional<Object>> values = IntStream.range(0, node.size())
                .mapToObj(index -> entry.read(node.get(index), place.at(index), findings))
                .toList();
        boolean complete = values.stream().allMatch(Optional::isPresent);
        return complete ? Optional.of(values.stream().map(Optional::orElseThrow).toList()) : Optional.empty();
    }

    private static String entries(String bound) {
        return bound.endsWith(" 1") ? bound + " entry" : bound + " entries";
    }

    @Override
    public JsonNode write(Object value) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        ((List<?>) value).forEach(each -> array.add(entry.write(each)));
        return array;
    }

    @Override
    public String noun() {
        return "a list in square brackets";
    }

    @Override
    public String advice() {
        return "write a list of %d to %d entries in square brackets".formatted(from, to);
    }

    @Override
    public ObjectNode schema() {
        ObjectNode schema =
                JsonText.object().put("type", "array").put("minItems", from).put("maxItems", to);
        schema.set("items", entry.schema());
        return schema;
    }

    @Override
    public void listFields(Place place, Optional<String> optionalAt, List<SheetField> fields) {
        entry.listFields(place.at("*"), optionalAt, fields);
    }
}
