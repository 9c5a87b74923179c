// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.sheet.SheetField;
import drumfall.solver.sheet.SheetFields;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class BriefSheetTest {
    private final Workspace workspace = new Turns()
            .workspace(BundledBriefs.demo(), (brief, listener, cancelled) -> new SearchOutcome.Stopped(List.of()));
    private final BriefEdits edits = new BriefEdits(workspace);

    @Test
    void every_field_of_a_brief_has_its_entry_once() {
        List<String> entries = BriefSheet.rows()
                .flatMap(row -> row.lines().stream())
                .map(line -> line.field().pointer())
                .toList();
        List<String> fields = SheetFields.of(Brief.class).stream()
                .map(SheetField::pointer)
                .filter(pointer -> !pointer.startsWith("/objectives") && !pointer.startsWith("/locks"))
                .toList();
        assertThat(entries).containsExactlyInAnyOrderElementsOf(fields);
    }

    static Stream<SheetRow> rows() {
        return BriefSheet.rows();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void entering_what_stands_there_changes_nothing(SheetRow row) {
        row.lines().forEach(line -> edits.enter(row, line, edits.shown(line)));
        assertThat(workspace.undoName()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/weight/limit|9 1/4 lb|0",
                "/weight/limit|9 furlongs|1",
                "/weight/limit|''|1",
                "/teeth/leaves/from|8|0",
                "/teeth/leaves/from|eight|1",
                "/teeth/leaves/from|13|1",
                "/teeth/modules|1 mm, 1.25 mm|0",
                "/teeth/modules|1 mm, 1 mm|1",
                "/run/atMost|1 d|1",
                "/beat/pendulumLength/from|0.241 m|0",
                "/beat/pendulumLength/from|''|1",
            })
    void what_is_wrong_is_said_in_the_row_of_the_entry(String pointer, String typed, int problems) {
        SheetRow row = BriefSheet.rowOf(pointer).orElseThrow();
        row.lines().stream()
                .filter(line -> line.pointer().equals(pointer))
                .forEach(line -> edits.enter(row, line, typed));
        assertThat(edits.problems(row)).hasSize(problems);
        assertThat(workspace.draft().problems()).hasSize(problems);
    }

    @Test
    void an_optional_range_left_empty_is_not_asked_for() {
        SheetRow row = BriefSheet.rowOf("/beat/beatsPerHour").orElseThrow();
        row.lines().forEach(line -> edits.enter(row, line, line.name().equals("from") ? "7000" : "7400"));
        assertThat(workspace.draft().brief().orElseThrow().beat().beatsPerHour())
                .isPresent();
        row.lines().forEach(line -> edits.enter(row, line, ""));
        assertThat(workspace.draft().brief().orElseThrow().beat().beatsPerHour())
                .isEmpty();
    }

    @Test
    void no_objective_left_is_said_beside_the_objectives() {
        edits.objectives().forEach(wanted -> edits.want(wanted.figure(), false));
        assertThat(edits.objectiveProblems()).hasSize(1);
    }
}
