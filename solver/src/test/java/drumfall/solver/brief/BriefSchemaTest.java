// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.Dialects;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BriefSchemaTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    static List<String> names() {
        return BundledBriefs.names();
    }

    /** After a change of the records, write the generated text over the file. */
    @Test
    void the_published_schema_is_the_generated_one() throws IOException {
        try (var stream = BriefReader.class.getResourceAsStream("brief.schema.json")) {
            assertThat(new String(stream.readAllBytes(), StandardCharsets.UTF_8))
                    .isEqualTo(BriefSchema.text());
        }
    }

    @Test
    void the_schema_is_a_schema_of_draft_2020_12() {
        Schema metaSchema =
                REGISTRY.getSchema(SchemaLocation.of(Dialects.getDraft202012().getId()));
        assertThat(metaSchema.validate(BriefSchema.text(), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("names")
    void a_bundled_brief_is_valid(String name) {
        Schema schema = REGISTRY.getSchema(BriefSchema.text());
        assertThat(schema.validate(BundledBriefs.text(name).orElseThrow(), InputFormat.JSON))
                .isEmpty();
    }
}
