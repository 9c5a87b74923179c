// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names by Microsoft, <i>Naming Files, Paths, and Namespaces</i>: reserved characters, reserved names, trailing marks. */
class FileNamesTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "train.json",
                "arbor-2-pinion.svg",
                "a/b/c/d/e.txt",
                "Räder.txt",
                "com10.txt",
                "console.txt",
                "a b.txt",
                "nullen",
                "a..b",
                "lpt.txt"
            })
    void a_good_name_is_taken(String name) {
        assertThat(FileNames.leavesFolder(name)).isFalse();
        assertThat(FileNames.brokenRule(name)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"..", "../a", "a/..", "a/../b", "/a", "\\a", "C:a", "c:\\a", "\\\\server\\share", "a\\..\\b"})
    void a_name_that_is_absolute_or_climbs_leaves_the_folder(String name) {
        assertThat(FileNames.leavesFolder(name)).isTrue();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            CON              ~ name.device
            con.txt          ~ name.device
            Nul              ~ name.device
            a/PRN.tar.gz     ~ name.device
            COM1             ~ name.device
            lpt9.svg         ~ name.device
            COM¹.txt         ~ name.device
            a<b              ~ name.character
            a>b              ~ name.character
            a"b              ~ name.character
            a|b              ~ name.character
            a?b              ~ name.character
            a*b              ~ name.character
            a:b              ~ name.character
            a\\b             ~ name.character
            a.               ~ name.edge
            .hidden          ~ name.edge
            a/./b            ~ name.edge
            a//b             ~ name.length
            a/               ~ name.length
            a/b/c/d/e/f      ~ name.length
            Files.SHA256     ~ name.reserved
            """)
    void a_name_that_breaks_a_rule_is_refused(String name, String rule) {
        assertThat(FileNames.brokenRule(name)).contains(rule);
    }

    @ParameterizedTest
    @ValueSource(strings = {" a", "a ", "a /b"})
    void no_part_begins_or_ends_with_a_space(String name) {
        assertThat(FileNames.brokenRule(name)).contains("name.edge");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\nb", "a\u0000b", "a\u007fb"})
    void no_name_has_a_control_character(String name) {
        assertThat(FileNames.brokenRule(name)).contains("name.character");
    }

    @ParameterizedTest
    @CsvSource({"A.TXT, a.txt", "Ra\u0308der, räder"})
    void names_that_are_one_file_somewhere_are_one_name(String first, String second) {
        assertThat(FileNames.key(first)).isEqualTo(FileNames.key(second));
    }
}
