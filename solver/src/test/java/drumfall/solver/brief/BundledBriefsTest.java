// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BundledBriefsTest {
    static List<String> names() {
        return BundledBriefs.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void a_bundled_brief_is_in_order(String name) {
        assertThat(BriefReader.read(BundledBriefs.text(name).orElseThrow()).problems())
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("names")
    void a_bundled_brief_is_written_as_it_was_read(String name) {
        Brief brief = BundledBriefs.load(name).orElseThrow();
        assertThat(BriefWriter.write(brief)).isEqualTo(BundledBriefs.text(name).orElseThrow());
    }

    @Test
    void the_demonstration_is_the_weekly_wall_clock() {
        assertThat(BundledBriefs.demo().run().wanted().text()).isEqualTo("8 d");
    }

    @Test
    void another_name_is_no_bundled_brief() {
        assertThat(BundledBriefs.load("brief.schema")).isEmpty();
    }
}
