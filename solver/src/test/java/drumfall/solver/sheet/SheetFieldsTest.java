// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.quantity.Dimension;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetFieldsTest {
    private static final List<SheetField> FIELDS = SheetFields.of(SampleSheet.class);

    private static SheetField field(String pointer) {
        return FIELDS.stream()
                .filter(field -> field.pointer().equals(pointer))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "/name, TEXT, ''",
        "/glazed, FLAG, ''",
        "/shelves, COUNT, ''",
        "/finish, CHOICE, ''",
        "/height, QUANTITY, ''",
        "/marks/*, COUNT, ''",
        "/doors, COUNT, /doors",
        "/gap, QUANTITY, /gap",
        "/inside, CHOICE, /inside",
        "/hinges/*/pin, QUANTITY, ''",
        "/hinges/*/maker, TEXT, /hinges/*/maker",
        "/tolerance, QUANTITY, /tolerance",
        "/spare/pin, QUANTITY, /spare",
        "/spare/maker, TEXT, /spare/maker",
    })
    void every_leaf_is_listed_with_its_kind_and_what_may_be_left_out(
            String pointer, FieldKind kind, String optionalAt) {
        assertThat(field(pointer).kind()).isEqualTo(kind);
        assertThat(field(pointer).optionalAt().orElse("")).isEqualTo(optionalAt);
        assertThat(FIELDS).hasSize(14);
    }

    @Test
    void a_quantity_has_its_dimension_and_its_bounds_as_written() {
        assertThat(field("/height").measures())
                .containsExactly(new QuantityRange(
                        Dimension.LENGTH, Optional.of(new Bound("0 m", false)), Optional.of(new Bound("3 m", false))));
        assertThat(field("/gap").measures())
                .containsExactly(
                        new QuantityRange(Dimension.LENGTH, Optional.of(new Bound("1 mm", true)), Optional.empty()));
        assertThat(field("/tolerance").measures())
                .extracting(QuantityRange::words)
                .containsExactly("a number of at most 100 %", "a mass of at least 1 g");
    }

    @Test
    void a_count_has_its_bounds_and_a_choice_its_words() {
        assertThat(field("/shelves").low()).contains(1);
        assertThat(field("/shelves").high()).contains(9);
        assertThat(field("/finish").choices()).containsExactly("oiled", "limed-oak");
    }
}
