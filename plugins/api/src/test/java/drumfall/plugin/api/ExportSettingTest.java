// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drumfall.plugin.api.ExportSetting.Choice;
import drumfall.plugin.api.ExportSetting.Count;
import drumfall.plugin.api.ExportSetting.Length;
import drumfall.plugin.api.ExportSetting.Text;
import drumfall.plugin.api.ExportSetting.YesNo;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What may be declared, and what a declaration allows. */
class ExportSettingTest {
    private static final Length EDGE =
            new Length("edge", "Edge", "Room around it.", length("5 mm"), length("1 mm"), length("1 in"));
    private static final Count COPIES = new Count("copies", "Copies", "How many.", 1, 1, 9);
    private static final Text REMARK = new Text("remark", "Remark", "A line.", "", 5);
    private static final Choice PAPER = choice("a4", "a4", "letter");

    private static Quantity length(String typed) {
        return Quantity.parse(Dimension.LENGTH, typed);
    }

    private static Choice choice(String usual, String... values) {
        return new Choice(
                "paper",
                "Paper",
                "The paper.",
                usual,
                List.of(values).stream()
                        .map(value -> new Choice.Value(value, value + " paper"))
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"a", "chord-error", "a4-2", "x2"})
    void an_id_is_written_like_an_exporters(String id) {
        assertThatCode(() -> new YesNo(id, "Title", "Help.", true)).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "A", "2x", "chord_error", "-a", "a-", "a--b", "a.b", "a=b", "a b"})
    void any_other_id_is_refused(String id) {
        refused("id (" + id + ")", () -> new YesNo(id, "Title", "Help.", true));
    }

    @Test
    void titles_and_sentences_are_shown_lines() {
        refused("title", () -> new YesNo("a", " ", "Help.", true));
        refused("title", () -> new YesNo("a", "x".repeat(61), "Help.", true));
        refused("help", () -> new YesNo("a", "Title", "Two\nlines.", true));
        refused("help", () -> new YesNo("a", "Title", null, true));
    }

    @Test
    void a_usual_value_out_of_its_own_bounds_is_refused() {
        refused("usual value (2 in)", () -> new Length("a", "A", "A.", length("2 in"), length("1 mm"), length("1 in")));
        refused("usual value (5 mm)", () -> new Length("a", "A", "A.", length("5 mm"), length("9 mm"), length("1 mm")));
        refused("least value", () -> {
            Quantity mass = Quantity.parse(Dimension.MASS, "1 kg");
            new Length("a", "A", "A.", mass, mass, mass);
        });
        refused("usual value (0)", () -> new Count("a", "A", "A.", 0, 1, 9));
        refused("usual value (a5)", () -> choice("a5", "a4", "letter"));
        refused("usual value (longer)", () -> new Text("a", "A", "A.", "longer", 5));
    }

    @Test
    void a_choice_has_two_or_more_different_values() {
        refused("number of values (1)", () -> choice("a4", "a4"));
        refused("value (a4)", () -> choice("a4", "a4", "a4"));
        refused("id (A 4)", () -> new Choice.Value("A 4", "A4"));
        assertThatCode(() -> new Choice.Value("3mf", "3MF")).doesNotThrowAnyException();
    }

    private static void refused(String named, ThrowingCallable declaration) {
        assertThatIllegalArgumentException()
                .isThrownBy(declaration)
                .withMessageContaining(named)
                .withMessageContaining(" must ")
                .withMessageContaining("Maybe ");
    }

    @ParameterizedTest
    @CsvSource({"1 mm, true", "1 in, true", "25.4 mm, true", "0.999 mm, false", "25.401 mm, false", "0 mm, false"})
    void bounds_of_lengths_are_allowed_themselves(String typed, boolean allowed) {
        assertThat(EDGE.allows(length(typed))).isEqualTo(allowed);
    }

    @ParameterizedTest
    @CsvSource({"0, false", "1, true", "9, true", "10, false"})
    void bounds_of_counts_are_allowed_themselves(int count, boolean allowed) {
        assertThat(COPIES.allows(count)).isEqualTo(allowed);
    }

    @ParameterizedTest
    @CsvSource({"a4, true", "letter, true", "A4, false", "'', false"})
    void only_listed_values_are_allowed(String value, boolean allowed) {
        assertThat(PAPER.allows(value)).isEqualTo(allowed);
    }

    @Test
    void texts_are_one_line() {
        assertThat(REMARK.allows("fives")).isTrue();
        assertThat(REMARK.allows("sixsix")).isFalse();
        assertThat(REMARK.allows("a\nb")).isFalse();
    }

    @Test
    void what_is_not_set_has_its_usual_value_and_what_is_set_the_last_one() {
        SettingValues values =
                SettingValues.USUAL.with(COPIES, 2).with(PAPER, "letter").with(COPIES, 3);
        assertThat(values.of(COPIES)).isEqualTo(3);
        assertThat(values.of(PAPER)).isEqualTo("letter");
        assertThat(values.of(EDGE)).isEqualTo(length("5 mm"));
        assertThat(SettingValues.USUAL.of(COPIES)).isEqualTo(1);
    }

    @Test
    void a_value_out_of_bounds_cannot_be_set() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SettingValues.USUAL.with(COPIES, 10))
                .withMessageContaining("value (10) of the setting (copies)");
    }
}
