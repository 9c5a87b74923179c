// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.groups.Tuple.tuple;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetReaderTest {
    private static SampleSheet sample() {
        return SheetReader.read(SampleSheet.class, SampleSheet.TEXT).accepted().orElseThrow();
    }

    @Test
    void every_kind_of_field_is_read() {
        SampleSheet sheet = sample();
        assertThat(sheet.name()).isEqualTo("Corner case");
        assertThat(sheet.glazed()).isTrue();
        assertThat(sheet.shelves()).isEqualTo(3);
        assertThat(sheet.finish()).isEqualTo(SampleSheet.Finish.LIMED_OAK);
        assertThat(sheet.height()).isEqualTo(Quantity.parse(Dimension.LENGTH, "5 ft 6 1/2 in"));
        assertThat(sheet.marks()).containsExactly(0, 5);
        assertThat(sheet.gap()).map(Quantity::text).contains("3/32 in");
        assertThat(sheet.hinges())
                .extracting(SampleSheet.Hinge::maker)
                .containsExactly(Optional.empty(), Optional.of("Tansy"));
    }

    @Test
    void an_absent_optional_field_is_empty() {
        assertThat(sample().doors()).isEmpty();
        assertThat(sample().spare()).isEmpty();
    }

    @Test
    void a_tree_is_read_as_its_text_is_and_stays_as_it_was() {
        ObjectNode tree = SheetWriter.tree(sample());
        ObjectNode before = tree.deepCopy();
        assertThat(SheetReader.read(SampleSheet.class, tree).accepted()).contains(sample());
        assertThat(tree).isEqualTo(before);
    }

    @Test
    void all_problems_come_back_in_the_order_of_the_sheet() {
        ObjectNode tree = SheetWriter.tree(sample());
        tree.put("shelves", 10).put("height", "3 m").put("naem", "x").remove("name");
        ((ObjectNode) tree.withArray("hinges").get(1)).put("pin", "1 N");
        assertThat(SheetReader.read(SampleSheet.class, tree).problems())
                .extracting(SheetProblem::pointer)
                .containsExactly("/naem", "/name", "/shelves", "/height", "/hinges/1/pin");
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
            "3 m";      it must be less than 3 m;       write a length of more than 0 m and less than 3 m
            "0 m";      it must be more than 0 m;       write a length of more than 0 m and less than 3 m
            "-1 in";    it must be more than 0 m;       write a length of more than 0 m and less than 3 m
            "1 kg";     the unit "kg" is not known;     write it with one of µm, mm, cm, in, ft, m, for example "1 m"
            "1/0 m";    a fraction must not be over zero; write it with one of µm, mm, cm, in, ft, m, for example "1.25 m"
            1.5;        it must be a length written as text in quotes; write a length of more than 0 m and less than 3 m in quotes, in the manner of "1.25 m"
            ["1 m"];    it must be a length written as text in quotes; write a length of more than 0 m and less than 3 m in quotes, in the manner of "1.25 m"
            "";         the text must not be empty;     write a length of more than 0 m and less than 3 m in quotes, in the manner of "1.25 m"
            """)
    void a_quantity_out_of_its_bounds_or_dimension_is_refused(String value, String rule, String remedy) {
        String text = SampleSheet.TEXT.replace("\"5 ft 6 1/2 in\"", value);
        assertThat(SheetReader.read(SampleSheet.class, text).problems())
                .containsExactly(new SheetProblem("/height", value, rule, remedy));
    }

    @ParameterizedTest
    @CsvSource({"1 g", "100 %", "0.5", "1/2 oz"})
    void a_quantity_may_measure_any_one_of_several_things(String typed) {
        ObjectNode tree = SheetWriter.tree(sample()).put("tolerance", typed);
        assertThat(SheetReader.read(SampleSheet.class, tree)
                        .accepted()
                        .orElseThrow()
                        .tolerance())
                .map(Quantity::text)
                .contains(typed);
    }

    @Test
    void a_refusal_of_the_record_itself_is_a_problem_of_its_group() {
        String text = SampleSheet.TEXT.replace("Tansy", "nobody");
        assertThat(SheetReader.read(SampleSheet.class, text).problems())
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.pointer()).isEqualTo("/hinges/1");
                    assertThat(problem.rule()).isEqualTo("a hinge has a maker");
                });
    }

    @Test
    void a_long_value_is_cut_and_stays_on_one_line() {
        String text = SampleSheet.TEXT.replace("Corner case", "x".repeat(100_000));
        assertThat(SheetReader.read(SampleSheet.class, text).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.value()).hasSize(61).endsWith("…"));
    }

    @ParameterizedTest
    @CsvSource({"\\ud800", "a\\u0007", "a\\u2028b", "a\\nb"})
    void a_text_with_unprintable_characters_is_refused(String escape) {
        String text = SampleSheet.TEXT.replace("Corner case", escape);
        assertThat(SheetReader.read(SampleSheet.class, text).problems())
                .extracting(SheetProblem::pointer, SheetProblem::rule)
                .containsExactly(tuple("/name", "the text must hold no control characters and stand on one line"));
    }

    /** Two hundred characters outside the basic plane are 400 chars but 200 characters. */
    @Test
    void characters_are_counted_as_people_count_them() {
        String text = SampleSheet.TEXT.replace("Corner case", "𝄞".repeat(200));
        assertThat(SheetReader.read(SampleSheet.class, text).problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"shelvse, shelves", "Height, height", "finnish, finish", "glazd, glazed", "hinge, hinges", "nmae, name"
    })
    void a_misspelt_field_is_told_its_nearest_name(String written, String meant) {
        ObjectNode tree = SheetWriter.tree(sample()).put(written, 1);
        assertThat(SheetReader.read(SampleSheet.class, tree).problems())
                .extracting(SheetProblem::remedy)
                .containsExactly("write \"%s\" if that was meant, or leave the field out".formatted(meant));
    }

    @ParameterizedTest
    @CsvSource({"colour", "x", "pendulum", "h"})
    void a_field_of_quite_another_name_is_told_all_names(String written) {
        ObjectNode tree = SheetWriter.tree(sample()).put(written, 1);
        assertThat(SheetReader.read(SampleSheet.class, tree).problems())
                .extracting(SheetProblem::remedy)
                .singleElement()
                .asString()
                .startsWith("leave it out (the fields known here are \"name\", \"glazed\"");
    }

    private record Unmeasured(Quantity length) {}

    private record Uncounted(int number) {}

    private record Unknown(List<Double> values) {}

    @Test
    void a_record_that_no_sheet_can_hold_is_a_fault_of_the_program() {
        for (Class<? extends Record> type : List.of(Unmeasured.class, Uncounted.class, Unknown.class)) {
            assertThatThrownBy(() -> SheetReader.read(type, "{}")).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
