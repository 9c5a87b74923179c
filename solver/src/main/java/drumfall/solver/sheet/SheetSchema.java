// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * Writes the JSON Schema (draft 2020-12) of a kind of file from the same description its reader follows.
 *
 * <p>The schema tells structure, words, counts and units. Bounds of quantities and rules between fields are beyond it; the
 * bounds stand in the descriptions.
 */
public final class SheetSchema {
    private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";

    private SheetSchema() {}

    /**
     * The schema as text, ending in a line feed.
     *
     * @param format the kind of file
     */
    public static String of(SheetFormat<?> format) {
        ObjectNode schema =
                JsonText.object().put("$schema", DRAFT).put("title", format.name() + " " + format.version());
        ObjectNode sheet = Shapes.ofRecord(format.type()).schema();
        schema.set("type", sheet.get("type"));
        schema.putObject("properties").<ObjectNode>setAll(opening(format)).setAll((ObjectNode) sheet.get("properties"));
        ArrayNode required = schema.putArray("required");
        required.add(SheetFormat.FORMAT).add(SheetFormat.VERSION).addAll((ArrayNode) sheet.get("required"));
        schema.put("additionalProperties", false).set("$defs", dimensions(format));
        return JsonText.of(schema);
    }

    private static ObjectNode dimensions(SheetFormat<?> format) {
        ObjectNode definitions = JsonText.object();
        SheetFields.of(format.type()).stream()
                .flatMap(field -> field.measures().stream())
                .map(QuantityRange::dimension)
                .distinct()
                .sorted()
                .forEach(dimension -> definitions
                        .putObject(SheetWriter.word(dimension))
                        .put("type", "string")
                        .put("pattern", UnitPattern.of(dimension)));
        return definitions;
    }

    private static ObjectNode opening(SheetFormat<?> format) {
        ObjectNode opening = JsonText.object();
        opening.putObject(SheetFormat.FORMAT).put("const", format.name());
        opening.putObject(SheetFormat.VERSION)
                .put("type", "integer")
                .put("minimum", 1)
                .put("maximum", format.version());
        return opening;
    }
}
