// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Lays JSON out as people write it: two blanks a level, lists on one line, one line feed at the end. */
final class JsonText {
    private static final ObjectWriter WRITER = JsonMapper.builder()
            .build()
            .writer(new DefaultPrettyPrinter(Separators.createDefaultInstance()
                            .withObjectFieldValueSpacing(Spacing.AFTER)
                            .withArrayValueSpacing(Spacing.AFTER)
                            .withObjectEmptySeparator("")
                            .withArrayEmptySeparator(""))
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(DefaultPrettyPrinter.NopIndenter.instance));

    private JsonText() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static String of(JsonNode node) {
        try {
            return WRITER.writeValueAsString(node) + "\n";
        } catch (JsonProcessingException fault) {
            throw new IllegalStateException("The sheet cannot be laid out as JSON.", fault);
        }
    }
}
