// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class BriefSchemaTest {
    @Test
    void the_published_schema_is_the_generated_one() throws IOException {
        try (var stream = BriefReader.class.getResourceAsStream("brief.schema.json")) {
            assertThat(new String(stream.readAllBytes(), StandardCharsets.UTF_8))
                    .isEqualTo(BriefSchema.text());
        }
    }
}
