// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which plugin a program serves; the rule is semantic versioning's for major and minor numbers (semver.org, 2.0.0, 7-8). */
class ApiVersionTest {
    @ParameterizedTest
    @CsvSource({
        "1.0, 1.0, true",
        "1.3, 1.0, true",
        "1.3, 1.3, true",
        "1.3, 1.4, false",
        "1.9, 1.10, false",
        "1.10, 1.9, true",
        "2.0, 1.0, false",
        "1.0, 2.0, false"
    })
    void a_program_serves_the_same_major_and_no_larger_minor_number(String program, String asked, boolean serves) {
        assertThat(ApiVersion.parse(program).serves(ApiVersion.parse(asked))).isEqualTo(serves);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1", "1.0.0", "0.9", "01.0", "1.-1", " 1.0", "1.00", "1,0", "99999999.0", "one"})
    void any_other_text_is_refused(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ApiVersion.parse(text))
                .withMessageContaining("(" + text + ")")
                .withMessageContaining("Maybe write " + ApiVersion.CURRENT + ".");
    }

    @Test
    void a_version_reads_as_it_is_written() {
        assertThat(ApiVersion.parse("1.20")).hasToString("1.20");
    }

    @Test
    void numbers_below_the_first_version_are_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new ApiVersion(0, 9));
        assertThatIllegalArgumentException().isThrownBy(() -> new ApiVersion(1, -1));
    }
}
