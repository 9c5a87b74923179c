// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/** True or false. */
record FlagShape() implements Shape {
    @Override
    public Optional<Object> read(JsonNode node, Place place, Findings findings) {
        if (!node.isBoolean()) {
            findings.wrongType(place, node, this);
            return Optional.empty();
        }
        return Optional.of(node.booleanValue());
    }

    @Override
    public JsonNode write(Object value) {
        return BooleanNode.valueOf((Boolean) value);
    }

    @Override
    public String noun() {
        return "true or false";
    }

    @Override
    public String advice() {
        return "write true or false, without quotes";
    }

    @Override
    public ObjectNode schema() {
        return JsonText.object().put("type", "boolean");
    }

    @Override
    public void listFields(Place place, Optional<String> optionalAt, List<SheetField> fields) {
        fields.add(SheetField.plain(place, optionalAt, FieldKind.FLAG, List.of()));
    }
}
