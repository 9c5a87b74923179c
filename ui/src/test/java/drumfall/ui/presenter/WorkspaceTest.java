// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.rating.Rating;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.train.Train;
import drumfall.ui.design.Design;
import drumfall.ui.presenter.Front.Standing;
import drumfall.ui.presenter.StripFigure.Kind;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class WorkspaceTest {
    private static final StripFigure FIRST_WHEEL = StripFigure.of(Kind.WHEEL, new MeshPlace(MeshPlace.Side.BELOW, 1));
    private static final StripFigure SECOND_WHEEL = StripFigure.of(Kind.WHEEL, new MeshPlace(MeshPlace.Side.BELOW, 2));

    private final Turns turns = new Turns();
    private final Workspace workspace = turns.workspace(SmallBriefs.small());
    private final BriefEdits edits = new BriefEdits(workspace);

    @BeforeEach
    void solve() {
        turns.solve(workspace);
    }

    private Train chosen() {
        return workspace.chosen().map(Rating::train).orElseThrow();
    }

    private Front front() {
        return workspace.front().orElseThrow();
    }

    private void enter(String pointer, String typed) {
        SheetRow row = BriefSheet.rowOf(pointer).orElseThrow();
        row.lines().stream()
                .filter(line -> line.pointer().equals(pointer))
                .forEach(line -> edits.enter(row, line, typed));
    }

    @Test
    void until_the_maker_chooses_the_first_train_is_chosen_and_there_is_nothing_to_undo() {
        assertThat(front().standing()).isEqualTo(Standing.PROVED);
        assertThat(chosen()).isEqualTo(front().ratings().get(0).train());
        assertThat(workspace.undoName()).isEmpty();
    }

    @Test
    void edit_undo_and_redo_come_back_to_the_same_designs() {
        List<Design> designs = new ArrayList<>(List.of(workspace.design()));
        workspace.choose(front().ratings().get(2).train());
        designs.add(workspace.design());
        workspace.toggleLock(FIRST_WHEEL);
        designs.add(workspace.design());
        enter("/weight/limit", "11 kg");
        designs.add(workspace.design());
        edits.want(drumfall.solver.brief.ObjectiveFigure.MESHES, true);
        designs.add(workspace.design());
        for (int i = designs.size() - 2; i >= 0; i--) {
            workspace.undo();
            assertThat(workspace.design()).isEqualTo(designs.get(i));
        }
        assertThat(workspace.undoName()).isEmpty();
        for (int i = 1; i < designs.size(); i++) {
            workspace.redo();
            assertThat(workspace.design()).isEqualTo(designs.get(i));
        }
        assertThat(workspace.redoName()).isEmpty();
    }

    @Test
    void typing_in_one_entry_is_one_step_until_it_is_left() {
        enter("/weight/limit", "1");
        enter("/weight/limit", "11");
        enter("/weight/limit", "11 kg");
        workspace.sealEdit();
        enter("/weight/limit", "10 kg");
        workspace.undo();
        assertThat(workspace.draft().typed("/weight/limit")).isEqualTo("11 kg");
        workspace.undo();
        assertThat(workspace.draft().typed("/weight/limit")).isEqualTo("12 kg");
        assertThat(workspace.undoName()).isEmpty();
    }

    @Test
    void two_held_wheels_stay_in_every_train_of_the_new_front() {
        int first = chosen().below().get(0).toothCount();
        int second = chosen().below().get(1).toothCount();
        workspace.toggleLock(FIRST_WHEEL);
        workspace.toggleLock(SECOND_WHEEL);
        turns.finish(workspace);
        assertThat(front().ratings()).isNotEmpty().allSatisfy(rating -> {
            assertThat(rating.train().below().get(0).toothCount()).isEqualTo(first);
            assertThat(rating.train().below().get(1).toothCount()).isEqualTo(second);
        });
    }

    @Test
    void a_held_figure_is_let_go_by_the_same_act() {
        workspace.toggleLock(FIRST_WHEEL);
        assertThat(LockEdits.holds(workspace.draft().locks(), FIRST_WHEEL)).isTrue();
        workspace.toggleLock(FIRST_WHEEL);
        assertThat(LockEdits.held(workspace.draft().locks())).isEmpty();
    }

    @Test
    void every_kind_of_figure_can_be_held_and_let_go() {
        // Directions, and holes that no mesh settles, are held by the elevation, not by the strip.
        for (Kind kind : EnumSet.complementOf(
                EnumSet.of(Kind.DIRECTION, Kind.MOTION_DIRECTION, Kind.MOTION_DISTANCE, Kind.PALLET_DISTANCE))) {
            StripFigure figure =
                    kind.placed() ? StripFigure.of(kind, new MeshPlace(MeshPlace.Side.ABOVE, 1)) : StripFigure.of(kind);
            workspace.toggleLock(figure);
            assertThat(LockEdits.held(workspace.draft().locks())).containsExactly(figure);
            assertThat(workspace.draft().problems()).isEmpty();
            workspace.toggleLock(figure);
            assertThat(LockEdits.held(workspace.draft().locks())).isEmpty();
        }
    }

    @Test
    void the_proved_front_stays_as_of_the_earlier_brief_until_the_new_one_is_there() {
        List<Rating> before = front().ratings();
        enter("/weight/limit", "11 kg");
        assertThat(workspace.frontIsEarlier()).isTrue();
        assertThat(front().ratings()).isEqualTo(before);
        assertThat(FrontView.of(workspace).earlier()).isTrue();
        turns.finish(workspace);
        assertThat(FrontView.of(workspace).earlier()).isFalse();
    }

    @Test
    void undoing_an_edit_brings_its_proved_front_back_without_a_search() {
        List<Rating> before = front().ratings();
        enter("/weight/limit", "3 kg");
        turns.finish(workspace);
        assertThat(front().ratings()).isNotEqualTo(before);
        workspace.undo();
        assertThat(workspace.search().running()).isFalse();
        assertThat(front().ratings()).isEqualTo(before);
    }

    @Test
    void a_refused_entry_keeps_the_front_and_starts_no_search() {
        enter("/weight/limit", "heavy");
        assertThat(workspace.search().running()).isFalse();
        assertThat(workspace.frontIsEarlier()).isTrue();
        assertThat(edits.problems(BriefSheet.rowOf("/weight/limit").orElseThrow()))
                .hasSize(1);
        assertThat(workspace.draft().typed("/weight/limit")).isEqualTo("heavy");
    }

    @Test
    void another_name_starts_no_search() {
        enter("/name", "Another clock");
        assertThat(workspace.search().running()).isFalse();
        assertThat(workspace.frontIsEarlier()).isFalse();
    }

    @Test
    void a_tried_count_is_rated_at_once_and_can_be_taken() {
        Train before = chosen();
        workspace.tryCount(FIRST_WHEEL, "70");
        assertThat(workspace.trial())
                .hasValueSatisfying(rating ->
                        assertThat(rating.train().below().get(0).toothCount()).isEqualTo(70));
        assertThat(chosen()).isEqualTo(before);
        workspace.acceptTrial();
        assertThat(chosen().below().get(0).toothCount()).isEqualTo(70);
        assertThat(workspace.trial()).isEmpty();
        workspace.undo();
        assertThat(chosen()).isEqualTo(before);
    }

    @Test
    void a_dropped_trial_changes_nothing() {
        Design before = workspace.design();
        workspace.tryCount(StripFigure.of(Kind.ESCAPE_TEETH), "27");
        workspace.dropTrial();
        assertThat(workspace.trial()).isEmpty();
        assertThat(workspace.design()).isEqualTo(before);
    }

    @Test
    void a_value_that_cannot_be_tried_is_told_in_one_sentence() {
        for (String typed : List.of("", "1", "-8", "sixty", "1001", "6.5")) {
            workspace.setNews(News.NONE);
            workspace.tryCount(FIRST_WHEEL, typed);
            assertThat(workspace.trial()).isEmpty();
            assertThat(workspace.news().trouble()).isTrue();
            assertThat(workspace.news().text()).endsWith(".");
        }
    }

    @Test
    void a_bare_module_is_read_in_millimetres() {
        workspace.tryCount(StripFigure.of(Kind.MODULE, new MeshPlace(MeshPlace.Side.ABOVE, 1)), "1.25");
        workspace.tryCount(StripFigure.of(Kind.DRUM), "30");
        assertThat(workspace.trial()).hasValueSatisfying(rating -> {
            assertThat(rating.train().meshes().get(0).module().millimetres()).isEqualTo(1.25);
            assertThat(rating.train().drumDiameter().doubleValue()).isEqualTo(0.03);
        });
    }

    @Test
    void demands_that_clash_are_named_in_the_words_of_the_brief() {
        enter("/weight/limit", "100 g");
        turns.finish(workspace);
        FrontView view = FrontView.of(workspace);
        assertThat(view.body()).isEqualTo(FrontView.Body.NO_TRAIN);
        assertThat(view.clash()).anySatisfy(demand -> {
            assertThat(demand.words()).isEqualTo("Heaviest weight 100 g");
            assertThat(demand.pointer()).isEqualTo("/weight/limit");
        });
        assertThat(DemandMarks.of(workspace.chosen(), workspace.front(), workspace.units()))
                .hasEntrySatisfying(
                        "/weight/limit", mark -> assertThat(mark.standing()).isEqualTo(DemandMarks.Standing.CLASHES));
    }

    @Test
    void a_search_that_breaks_down_is_a_state_of_its_own() {
        Workspace broken = turns.workspace(SmallBriefs.small(), (brief, listener, cancelled) -> {
            throw new IllegalStateException("on purpose");
        });
        broken.solve();
        turns.finish(broken);
        assertThat(FrontView.of(broken).body()).isEqualTo(FrontView.Body.FAILED);
    }

    @Test
    void a_stopped_search_says_that_trains_may_be_missing() {
        Rating only = front().ratings().get(0);
        Workspace slow = turns.workspace(SmallBriefs.small(), (brief, listener, cancelled) -> {
            listener.frontChanged(List.of(only));
            while (!cancelled.getAsBoolean()) {
                Thread.onSpinWait();
            }
            return new SearchOutcome.Stopped(List.of(only));
        });
        slow.solve();
        turns.until(() -> slow.front().isPresent());
        assertThat(slow.front().orElseThrow().standing()).isEqualTo(Standing.GROWING);
        slow.stopSearch();
        turns.finish(slow);
        assertThat(slow.front().orElseThrow().standing()).isEqualTo(Standing.STOPPED);
    }

    @Test
    void a_front_told_apart_in_larger_steps_says_so_and_another_says_nothing() {
        Rating only = front().ratings().get(0);
        Workspace thinned = turns.workspace(
                SmallBriefs.small(), (brief, listener, cancelled) -> new SearchOutcome.Proved(List.of(only), 4));
        thinned.solve();
        turns.finish(thinned);

        assertThat(FrontView.of(thinned).sentence())
                .isEqualTo("The brief's steps tell more than 1000 trains apart: searched in steps 4 times as large.");
        assertThat(thinned.front().orElseThrow().searched())
                .isEqualTo(SmallBriefs.small().inSteps(4));
        assertThat(FrontView.of(workspace).sentence()).isEmpty();
    }

    @Test
    void another_design_begins_a_history_of_its_own() {
        workspace.toggleLock(FIRST_WHEEL);
        Brief other = SmallBriefs.small();
        workspace.open(Design.of(other));
        assertThat(workspace.undoName()).isEmpty();
        assertThat(workspace.draft().brief()).isEqualTo(Optional.of(other));
    }
}
