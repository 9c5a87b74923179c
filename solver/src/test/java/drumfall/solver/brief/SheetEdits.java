// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;

/** Edits a tree as a table of tests writes it: pointer, equals sign, JSON value or "remove"; several joined by an ampersand. */
final class SheetEdits {
    private static final JsonMapper MAPPER = new JsonMapper();

    private SheetEdits() {}

    static ObjectNode demoWith(String edits) {
        return apply(BriefWriter.tree(BundledBriefs.demo()), edits);
    }

    static ObjectNode apply(ObjectNode tree, String edits) {
        Arrays.stream(edits.split(" & ")).filter(edit -> !edit.isBlank()).forEach(edit -> applyOne(tree, edit));
        return tree;
    }

    private static void applyOne(ObjectNode tree, String edit) {
        int sign = edit.indexOf(" = ");
        JsonPointer pointer = JsonPointer.compile(edit.substring(0, sign).strip());
        JsonNode parent = tree.at(pointer.head());
        String field = pointer.last().getMatchingProperty();
        String value = edit.substring(sign + 3).strip();
        if (parent instanceof ObjectNode object) {
            edit(object, field, value);
        } else {
            edit((ArrayNode) parent, pointer.last().getMatchingIndex(), value);
        }
    }

    private static void edit(ObjectNode object, String field, String value) {
        if (value.equals("remove")) {
            object.remove(field);
        } else {
            object.set(field, json(value));
        }
    }

    private static void edit(ArrayNode array, int index, String value) {
        if (index == array.size()) {
            array.add(json(value));
        } else {
            array.set(index, json(value));
        }
    }

    private static JsonNode json(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException fault) {
            throw new IllegalArgumentException("The value (%s) of an edit is not JSON.".formatted(text), fault);
        }
    }
}
