// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetTextTest {
    private record Leaf(@Count(from = 0, to = 9) int a) {}

    private static SheetProblem only(String text) {
        List<SheetProblem> problems = SheetReader.read(Leaf.class, text).problems();
        assertThat(problems).hasSize(1);
        return problems.get(0);
    }

    /** Line and column count from 1, as editors show them; the place is that of the fault or just after the word at fault. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
            {;                      at line 1, column 2;    the end of the text
            {"a";                   at line 1, column 5;    the end of the text
            {"a":;                  at line 1, column 6;    the end of the text
            {"a": 1;                at line 1, column 8;    the end of the text
            {a: 1};                 at line 1, column 2;    a: 1}
            {"a": 1,};              at line 1, column 9;    }
            {"a": x};               at line 1, column 7;    x}
            {"a": NaN};             at line 1, column 10;   }
            {"a": +1};              at line 1, column 8;    1}
            {"a" 1};                at line 1, column 6;    1}
            {'a': 1};               at line 1, column 2;    'a': 1}
            // remark;              at line 1, column 1;    // remark
            {"a": 1] ;              at line 1, column 8;    ]
            """)
    void text_that_is_not_json_is_refused_with_line_and_column(String text, String where, String value) {
        SheetProblem problem = only(text);
        assertThat(problem.pointer()).isEmpty();
        assertThat(problem.rule()).isEqualTo("the text is not JSON " + where);
        assertThat(problem.value()).isEqualTo(value);
        assertThat(problem.sentence()).startsWith("At the top, " + value + ": the text is not JSON");
    }

    @Test
    void the_line_is_that_of_the_fault() {
        assertThat(only("{\n  \"a\": 1\n  \"b\": 2\n}").rule()).contains("line 3, column 3");
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {"`{\"a\": 1} x`", "`{\"a\": 1}{}`", "`{\"a\": 1},`", "`{\"a\": 1}]`"})
    void text_after_the_sheet_is_refused(String text) {
        assertThat(only(text).rule())
                .isEqualTo("nothing may stand after the sheet's closing brace at line 1, column 9");
    }

    @Test
    void blank_space_after_the_sheet_is_no_matter() {
        assertThat(SheetReader.read(Leaf.class, "\n {\"a\": 1} \r\n\t").accepted())
                .contains(new Leaf(1));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {"``", "`   `", "`\n`"})
    void an_empty_text_is_refused(String text) {
        assertThat(only(text).rule()).isEqualTo("the text is empty");
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {"`[]`", "`1`", "`\"a\"`", "`null`", "`true`"})
    void another_value_than_a_group_is_refused(String text) {
        assertThat(only(text))
                .isEqualTo(new SheetProblem(
                        "", text, "it must be a group in braces", "write a group in braces with the fields \"a\""));
    }

    @Test
    void each_field_written_twice_is_named() {
        assertThat(SheetReader.read(Leaf.class, "{\"a\": 1, \"a\": 2, \"b\": {\"c\": 1, \"c\": 2}}")
                        .problems())
                .extracting(SheetProblem::pointer, SheetProblem::rule)
                .containsExactly(
                        tuple("/a", "the field \"a\" is written twice"),
                        tuple("/b/c", "the field \"c\" is written twice"),
                        tuple("/b", "there is no field of that name here"));
    }

    /** RFC 6901 section 3: "~" becomes "~0" and "/" becomes "~1"; the empty name is the pointer "/". */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', textBlock = """
            `a/b`,  /a~1b
            `m~n`,  /m~0n
            `~1`,   /~01
            ``,     /
            ` `,    `/ `
            `c%d`,  /c%d
            """)
    void pointers_are_escaped(String name, String pointer) {
        assertThat(only("{\"a\": 1, \"%s\": 2}".formatted(name)).pointer()).isEqualTo(pointer);
    }

    @Test
    void a_byte_order_mark_is_refused_by_name() {
        assertThat(only("\uFEFF{\"a\": 1}").value()).isEqualTo("a byte order mark");
    }

    @Test
    void hostile_depth_is_refused() {
        for (String open : List.of("[", "{\"a\":")) {
            assertThat(only(open.repeat(100_000)).rule()).contains("at most 32 deep");
        }
    }

    @Test
    void hostile_size_is_refused() {
        assertThat(only(" ".repeat(1_000_001)).rule())
                .isEqualTo("the text must have at most 1000000 characters, and it has 1000001");
        assertThat(only("{\"" + "x".repeat(2000) + "\": 1}").rule()).contains("names at most 1000 characters");
        assertThat(only("{\"a\": " + "9".repeat(101) + "}").rule()).contains("at most 100 digits");
    }

    @ParameterizedTest
    @CsvSource({"1e999999999999", "1e400", "1.0", "-0.0", "1E2"})
    void a_number_with_decimals_is_shown_as_written_and_never_expanded(String number) {
        assertThat(only("{\"a\": %s}".formatted(number)))
                .isEqualTo(new SheetProblem(
                        "/a",
                        number,
                        "it must be a whole number without quotes or decimals",
                        "write a whole number from 0 to 9"));
    }
}
