// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetFormatTest {
    private record Leaf(String name) {}

    private static final SheetFormat<Leaf> FORMAT = new SheetFormat<>(Leaf.class, "leaf", 2);

    @TempDir
    Path folder;

    private List<SheetProblem> problemsOfFile(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("leaf.json"), bytes);
        return FORMAT.read(file).problems();
    }

    @Test
    void a_file_opens_with_its_format_and_version() {
        assertThat(FORMAT.write(new Leaf("oak"))).isEqualTo("""
                {
                  "format": "leaf",
                  "version": 2,
                  "name": "oak"
                }
                """);
    }

    @Test
    void a_file_written_is_read_back() throws IOException {
        Path file = Files.writeString(folder.resolve("leaf.json"), FORMAT.write(new Leaf("Eichenblatt ½ µm")));
        assertThat(FORMAT.read(file).accepted()).contains(new Leaf("Eichenblatt ½ µm"));
    }

    @Test
    void an_older_version_is_read() {
        assertThat(FORMAT.read("{\"format\": \"leaf\", \"version\": 1, \"name\": \"oak\"}")
                        .accepted())
                .contains(new Leaf("oak"));
    }

    @Test
    void a_newer_version_is_refused_by_its_number_alone() {
        assertThat(FORMAT.read("{\"format\": \"leaf\", \"version\": 3, \"veins\": 5}")
                        .problems())
                .extracting(SheetProblem::pointer, SheetProblem::value)
                .containsExactly(tuple("/version", "3"));
    }

    @Test
    void another_format_is_refused_by_its_name_alone() {
        assertThat(FORMAT.read("{\"format\": \"root\", \"version\": 9, \"depth\": 5}")
                        .problems())
                .extracting(SheetProblem::pointer, SheetProblem::value)
                .containsExactly(tuple("/format", "\"root\""));
    }

    @Test
    void missing_openings_are_named_along_with_the_rest() {
        assertThat(FORMAT.read("{}").problems())
                .extracting(SheetProblem::pointer)
                .containsExactly("/format", "/version", "/name");
    }

    @ParameterizedTest
    @ValueSource(strings = {"null", "[]", "1", "\"leaf\""})
    void a_tree_that_is_no_group_is_refused(String text) {
        assertThat(FORMAT.read(text).problems())
                .extracting(SheetProblem::rule)
                .containsExactly("it must be a group in braces");
    }

    @Test
    void a_missing_tree_is_refused() {
        assertThat(FORMAT.read(JsonNodeFactory.instance.missingNode()).problems())
                .hasSize(1);
    }

    /** All but UTF-8 hold bytes or characters that no UTF-8 text has. */
    @ParameterizedTest
    @CsvSource({"UTF-16", "UTF-16LE", "UTF-16BE", "ISO-8859-1", "windows-1252"})
    void a_file_in_another_encoding_is_refused(String charset) throws IOException {
        byte[] bytes = FORMAT.write(new Leaf("Blatt ½")).getBytes(Charset.forName(charset));
        assertThat(problemsOfFile(bytes))
                .containsExactly(new SheetProblem(
                        "",
                        "the file leaf.json",
                        "the file is not written in UTF-8",
                        "save it as UTF-8 without a byte order mark"));
    }

    @Test
    void a_file_with_a_byte_order_mark_is_refused() throws IOException {
        byte[] bytes = ("\uFEFF" + FORMAT.write(new Leaf("oak"))).getBytes(StandardCharsets.UTF_8);
        assertThat(problemsOfFile(bytes)).extracting(SheetProblem::value).containsExactly("a byte order mark");
    }

    @Test
    void a_file_too_long_is_refused() throws IOException {
        assertThat(problemsOfFile(new byte[4_000_001]))
                .extracting(SheetProblem::rule)
                .containsExactly("the file must have at most 4000000 bytes");
    }

    @Test
    void a_missing_file_is_refused() {
        assertThat(FORMAT.read(folder.resolve("none.json")).problems())
                .containsExactly(new SheetProblem(
                        "", "the file none.json", "there is no such file", "check its name and folder"));
    }

    @Test
    void a_folder_is_refused() {
        assertThat(FORMAT.read(folder).problems())
                .extracting(SheetProblem::rule)
                .containsExactly("the file cannot be read");
    }
}
