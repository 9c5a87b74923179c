// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.brief.LeastRoom;
import drumfall.solver.brief.RoomFigure;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.sheet.SheetField;
import drumfall.solver.sheet.SheetFields;
import java.util.List;
import java.util.Optional;
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

    private void enter(String pointer, String typed) {
        SheetRow row = BriefSheet.rowOf(pointer).orElseThrow();
        SheetLine line = row.lines().stream()
                .filter(entry -> entry.pointer().equals(pointer))
                .findFirst()
                .orElseThrow();
        edits.enter(row, line, typed);
    }

    private Optional<LeastRoom> least() {
        return workspace.draft().brief().orElseThrow().frame().least();
    }

    @ParameterizedTest
    @CsvSource({
        "movement-height, 10 mm",
        "movement-width, 10 mm",
        "movement-depth, 10 mm",
        "plate-area, 10 cm2",
    })
    void the_room_is_wanted_small_with_one_choice_and_wanted_no_longer_with_another(String figure, String resolution) {
        SheetRow row = BriefSheet.rowOf("/frame/least/figure").orElseThrow();
        assertThat(row.mayBeSwitchedOff()).isTrue();
        workspace.edit("", workspace.draft().without("/frame/pillars"), Optional.empty());

        enter("/frame/least/figure", figure);

        LeastRoom least = least().orElseThrow();
        assertThat(least.figure().word()).isEqualTo(figure);
        assertThat(least.resolution().text()).isEqualTo(resolution);
        assertThat(least.enough()).isEmpty();
        workspace.undo();
        assertThat(least()).isEmpty();
        workspace.redo();
        workspace.sealEdit();
        enter("/frame/least/figure", "");
        assertThat(workspace.draft().at("/frame/least").isMissingNode()).isTrue();
        assertThat(least()).isEmpty();
    }

    @Test
    void steps_and_size_stay_while_the_room_is_another_length_and_begin_anew_for_an_area() {
        workspace.edit("", workspace.draft().without("/frame/pillars"), Optional.empty());
        enter("/frame/least/figure", "movement-height");
        enter("/frame/least/resolution", "5 mm");
        enter("/frame/least/enough", "200 mm");
        enter("/frame/least/figure", "movement-width");
        assertThat(least().orElseThrow().resolution().text()).isEqualTo("5 mm");
        assertThat(least().orElseThrow().enough().orElseThrow().text()).isEqualTo("200 mm");

        enter("/frame/least/figure", "plate-area");

        assertThat(least().orElseThrow().resolution().text()).isEqualTo("10 cm2");
        assertThat(least().orElseThrow().enough()).isEmpty();
    }

    @Test
    void a_size_that_is_small_enough_wants_the_room_small_by_itself() {
        enter("/frame/least/enough", "20 cm");
        assertThat(least().orElseThrow().figure()).isEqualTo(RoomFigure.MOVEMENT_HEIGHT);
        assertThat(least().orElseThrow().enough().orElseThrow().text()).isEqualTo("20 cm");
        enter("/frame/least/enough", "");
        assertThat(least().orElseThrow().enough()).isEmpty();
    }

    @Test
    void steps_left_out_or_of_the_wrong_measure_are_said_in_the_row_of_the_room() {
        SheetRow row = BriefSheet.rowOf("/frame/least/figure").orElseThrow();
        enter("/frame/least/figure", "movement-height");
        assertThat(edits.problems(row)).isEmpty();
        enter("/frame/least/resolution", "10 cm2");
        assertThat(edits.problems(row)).hasSize(1);
        enter("/frame/least/resolution", "");
        assertThat(edits.problems(row)).hasSize(1);
        // Pillars stand where the frame has them, so that no plate over them could be made small.
        assertThat(workspace.draft().at("/frame/pillars").isMissingNode()).isFalse();
        enter("/frame/least/figure", "plate-area");
        assertThat(edits.problems(row)).hasSize(1);
        enter("/frame/least/figure", "");
        assertThat(edits.problems(row)).isEmpty();
    }

    @Test
    void each_entry_of_the_room_is_explained_and_others_show_their_bounds() {
        SheetRow row = BriefSheet.rowOf("/frame/least/figure").orElseThrow();
        assertThat(row.lines())
                .hasSize(3)
                .allSatisfy(line -> assertThat(row.tip(line)).endsWith(".").isNotEqualTo(line.bounds()));
        assertThat(row.tip(row.lines().get(0))).contains("takes longer");
        SheetRow limit = BriefSheet.rowOf("/weight/limit").orElseThrow();
        SheetLine line = limit.lines().get(0);
        assertThat(limit.tip(line)).isEqualTo(line.bounds());
    }

    @Test
    void no_objective_left_is_said_beside_the_objectives() {
        edits.objectives().forEach(wanted -> edits.want(wanted.figure(), false));
        assertThat(edits.objectiveProblems()).hasSize(1);
    }
}
