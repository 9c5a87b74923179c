// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.TextNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.search.TrainExistence;
import drumfall.ui.design.BriefDraft;
import drumfall.ui.design.Design;
import drumfall.ui.work.LongDesk;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoTrainExplainerTest {
    private final Turns turns = new Turns();
    private final Workspace workspace = turns.workspace(tooLight());
    private final NoTrainExplainer explainer = new NoTrainExplainer(workspace, new LongDesk(turns, "reasons"));

    /** No train of the small brief runs under so little, and some do under less than ten times of it. */
    private static Brief tooLight() {
        return BriefDraft.of(SmallBriefs.small())
                .with("/weight/limit", TextNode.valueOf("1 kg"))
                .brief()
                .orElseThrow();
    }

    @BeforeEach
    void solve() {
        turns.solve(workspace);
    }

    private ReasonsView view() {
        return explainer.view().orElseThrow();
    }

    private void explained() {
        explainer.explain();
        turns.until(() -> view().stage() == Inquiry.DONE);
    }

    @Test
    void nothing_is_explained_until_the_maker_asks() {
        assertThat(view().stage()).isEqualTo(Inquiry.UNASKED);
        assertThat(view().clashes()).isEmpty();
        assertThat(view().doing()).isEmpty();
        assertThat(explainer.canExplain()).isTrue();
    }

    @Test
    void a_brief_with_trains_has_nothing_to_explain() {
        Workspace solved = turns.workspace(SmallBriefs.small());
        NoTrainExplainer idle = new NoTrainExplainer(solved, new LongDesk(turns, "reasons"));
        turns.solve(solved);
        assertThat(idle.view()).isEmpty();
        assertThat(idle.canExplain()).isFalse();
    }

    @Test
    void answers_come_in_one_by_one_and_none_that_came_is_lost() {
        List<ReasonsView> seen = new ArrayList<>();
        explainer.listen(() -> explainer.view().ifPresent(seen::add));
        explained();
        assertThat(seen.get(0).stage()).isEqualTo(Inquiry.BUSY);
        assertThat(seen.get(0).clashes()).isEmpty();
        assertThat(seen.get(0).doing())
                .isEqualTo("Looking for every set of demands that clash; 0 known so far. Stop with Esc.");
        for (int i = 1; i < seen.size(); i++) {
            assertThat(seen.get(i).offers()).containsAll(seen.get(i - 1).offers());
            assertThat(seen.get(i).done())
                    .isGreaterThanOrEqualTo(seen.get(i - 1).done());
        }
        assertThat(seen)
                .anyMatch(known ->
                        known.stage() == Inquiry.BUSY && !known.clashes().isEmpty());
    }

    @Test
    void once_no_other_set_clashes_none_is_looked_for_any_more() {
        List<ReasonsView> seen = new ArrayList<>();
        explainer.listen(() -> explainer.view().ifPresent(seen::add));
        explained();
        assertThat(seen)
                .filteredOn(known -> known.summary().contains("no other"))
                .isNotEmpty()
                .noneMatch(known -> known.doing().startsWith("Looking"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "UNASKED | ''",
                "BUSY    | Looking for every set of demands that clash; 0 known so far. Stop with Esc.",
                "STOPPED | Stopped; what was known until then stands below.",
                "FAILED  | The explanation broke down; what was known until then stands below,"
                        + " the details are in the log.",
                "DONE    | ''",
            })
    void every_stage_says_how_things_are(Inquiry stage, String words) {
        assertThat(ReasonsView.of(Reasons.unasked(tooLight()).at(stage), UnitSystem.METRIC)
                        .doing())
                .isEqualTo(words);
    }

    @Test
    void every_clashing_demand_leads_to_its_place_in_the_brief() {
        explained();
        assertThat(view().summary()).isNotBlank();
        assertThat(view().clashes()).isNotEmpty();
        assertThat(view().clashes())
                .allSatisfy(clash -> assertThat(clash.demands())
                        .isNotEmpty()
                        .allSatisfy(demand -> assertThat(
                                        workspace.draft().at(demand.pointer()).isMissingNode())
                                .as(demand.pointer())
                                .isFalse()));
        assertThat(view().clashes())
                .allSatisfy(clash -> assertThat(clash.demands())
                        .anyMatch(demand -> demand.pointer().equals("/weight/limit")
                                && demand.words().contains("1 kg")));
    }

    @Test
    void every_offer_put_into_the_brief_lets_a_train_exist_and_can_be_undone() {
        explained();
        Design before = workspace.design();
        List<Offer> offers = view().offers();
        assertThat(offers).anyMatch(offer -> offer.pointer().equals("/weight/limit"));
        for (Offer offer : offers) {
            explainer.put(offer);
            assertThat(workspace.draft().typed(offer.pointer())).isEqualTo(offer.value());
            // Asked of the search for existence, which knows nothing of nearest values.
            assertThat(TrainExistence.of(workspace.draft().brief().orElseThrow(), Set.of(), () -> false)
                            .some())
                    .as(offer.spoken())
                    .isTrue();
            workspace.undo();
            assertThat(workspace.design()).isEqualTo(before);
        }
    }

    @Test
    void the_weight_that_is_offered_is_the_lightest_train_s_and_a_step_less_has_none() {
        explained();
        Offer weight = view().offers().stream()
                .filter(offer -> offer.pointer().equals("/weight/limit"))
                .findFirst()
                .orElseThrow();
        explainer.put(weight);
        turns.finish(workspace);
        assertThat(workspace.front().orElseThrow().ratings()).isNotEmpty();
        workspace.undo();
        // Steps are a hundredth of the power of ten of what was typed: 1 kg goes by ten grams.
        long grams =
                Math.round(1000 * Quantity.parse(Dimension.MASS, weight.value()).si());
        new Offer("/weight/limit", "", grams - 10 + " g", "", "").put(workspace);
        turns.finish(workspace);
        assertThat(workspace.front().orElseThrow().standing()).isEqualTo(Front.Standing.NO_TRAIN);
    }

    @Test
    void a_stopped_explanation_keeps_what_is_known_and_can_be_asked_anew() {
        assertThat(explainer.busy()).isFalse();
        explainer.explain();
        assertThat(explainer.busy()).isTrue();
        explainer.stop();
        turns.until(() -> !explainer.busy());
        assertThat(view().stage()).isEqualTo(Inquiry.STOPPED);
        assertThat(view().doing()).isEqualTo("Stopped; what was known until then stands below.");
        assertThat(explainer.canExplain()).isTrue();
        explained();
        assertThat(view().clashes()).isNotEmpty();
    }

    @Test
    void an_explanation_comes_back_with_its_brief_and_a_changed_brief_ends_one_that_runs() {
        explained();
        ReasonsView known = view();
        explainer.put(view().offers().get(0));
        turns.finish(workspace);
        assertThat(explainer.view()).isEmpty();
        workspace.undo();
        assertThat(view()).isEqualTo(known);
        assertThat(explainer.canExplain()).isFalse();
    }
}
