// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.RawValue;
import java.io.IOException;

/**
 * Builds a tree token by token, so that every field written twice is told with its place.
 *
 * <p>No field of a sheet takes a number with decimals, so one is kept as its text and shown as written.
 */
final class TreeBuilder {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final JsonParser parser;
    private final Findings findings;

    TreeBuilder(JsonParser parser, Findings findings) {
        this.parser = parser;
        this.findings = findings;
    }

    /** The value at the parser's token, which is left on the value's last token. */
    JsonNode value(Place place) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(place);
            case START_ARRAY -> array(place);
            case VALUE_STRING -> NODES.textNode(parser.getText());
            case VALUE_NUMBER_INT -> NODES.numberNode(parser.getBigIntegerValue());
            case VALUE_NUMBER_FLOAT -> NODES.rawValueNode(new RawValue(parser.getText()));
            case VALUE_TRUE, VALUE_FALSE -> NODES.booleanNode(parser.getBooleanValue());
            default -> NODES.nullNode();
        };
    }

    private ObjectNode object(Place place) throws IOException {
        ObjectNode object = NODES.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            parser.nextToken();
            Place here = place.at(name);
            JsonNode value = value(here);
            if (object.has(name)) {
                findings.add(here, value, "the field \"%s\" is written twice".formatted(name), "keep one of the two");
            } else {
                object.set(name, value);
            }
        }
        return object;
    }

    private ArrayNode array(Place place) throws IOException {
        ArrayNode array = NODES.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(value(place.at(array.size())));
        }
        return array;
    }
}
