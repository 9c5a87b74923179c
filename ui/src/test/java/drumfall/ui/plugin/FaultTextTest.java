// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FaultTextTest {
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle(FaultText.BUNDLE, Locale.ROOT);

    @ParameterizedTest
    @EnumSource(FaultKind.class)
    void every_kind_has_a_sentence_that_names_the_plugin(FaultKind kind) {
        assertThat(FaultText.sentence(kind, "odd.jar", "first", "second", "third", "fourth"))
                .contains(kind == FaultKind.FOLDER_UNREADABLE ? "first" : "odd.jar")
                .endsWith(".")
                .doesNotContain("{", "}");
    }

    @Test
    void no_key_is_without_use() {
        assertThat(BUNDLE.keySet().stream().filter(key -> !key.contains(".")).collect(Collectors.toSet()))
                .isEqualTo(Arrays.stream(FaultKind.values()).map(Enum::name).collect(Collectors.toSet()));
    }

    @Test
    void what_strangers_wrote_becomes_one_short_line() {
        assertThat(FaultText.oneLine("a\nb\u001b[31mc")).isEqualTo("a b [31mc");
        assertThat(FaultText.oneLine("x".repeat(1000))).hasSize(241).endsWith("…");
    }

    @Test
    void a_plugin_named_like_a_pattern_does_no_harm() {
        assertThat(FaultText.sentence(FaultKind.NOT_A_JAR, "{9}'.jar", "reason"))
                .startsWith("{9}'.jar is not");
    }
}
