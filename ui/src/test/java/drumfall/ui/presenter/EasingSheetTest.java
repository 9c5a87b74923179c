// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.explain.CostStep;
import drumfall.solver.rating.Rating;
import drumfall.ui.design.Design;
import drumfall.ui.work.LongDesk;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class EasingSheetTest {
    private final Turns turns = new Turns();
    private final Workspace workspace = turns.workspace(SmallBriefs.small());
    private final EasingSheet sheet = new EasingSheet(workspace, new LongDesk(turns, "easing"));

    @BeforeEach
    void solve() {
        turns.solve(workspace);
    }

    private void eased() {
        sheet.ask();
        turns.until(() -> sheet.stage() == Inquiry.DONE);
    }

    private double lightest() {
        return workspace.front().orElseThrow().ratings().stream()
                .mapToDouble(Rating::recommendedWeight)
                .min()
                .orElseThrow();
    }

    @Test
    void without_a_train_there_is_one_sentence_and_nothing_to_ask() {
        EasingSheet empty = new EasingSheet(turns.workspace(SmallBriefs.small()), new LongDesk(turns, "easing"));
        assertThat(empty.sentence())
                .isEqualTo("No train is chosen. Choose one in the front to see what easing the brief would buy.");
        assertThat(empty.canAsk()).isFalse();
        empty.ask();
        assertThat(empty.stage()).isEqualTo(Inquiry.UNASKED);
    }

    @Test
    void a_train_that_misses_demands_is_not_asked_about() {
        workspace.choose(MeshTrains.train());
        assertThat(workspace.chosen().orElseThrow().feasible()).isFalse();
        assertThat(sheet.canAsk()).isFalse();
        assertThat(sheet.sentence())
                .isEqualTo("The chosen train misses demands of the brief. Choose one that meets them all.");
    }

    @Test
    void nothing_is_searched_until_the_maker_asks() {
        assertThat(sheet.stage()).isEqualTo(Inquiry.UNASKED);
        assertThat(sheet.offers()).isEmpty();
        assertThat(sheet.canAsk()).isTrue();
    }

    @Test
    void every_figure_gets_its_answer_and_none_that_came_is_lost() {
        List<List<Offer>> seen = new ArrayList<>();
        sheet.listen(() -> seen.add(sheet.offers()));
        eased();
        assertThat(sheet.offers())
                .hasSameSizeAs(CostStep.of(workspace.brief()))
                .extracting(Offer::pointer)
                .containsExactlyInAnyOrderElementsOf(CostStep.of(workspace.brief()).stream()
                        .map(step -> step.easing().pointer())
                        .toList());
        for (int i = 1; i < seen.size(); i++) {
            assertThat(seen.get(i)).containsAll(seen.get(i - 1));
        }
        assertThat(sheet.done()).isEqualTo(1);
    }

    @Test
    void an_offer_that_buys_something_leads_to_a_lighter_train_and_can_be_undone() {
        double before = lightest();
        workspace.choose(workspace.front().orElseThrow().ratings().stream()
                .min(Comparator.comparingDouble(Rating::recommendedWeight))
                .orElseThrow()
                .train());
        eased();
        Design design = workspace.design();
        List<Offer> gains = sheet.offers().stream()
                .filter(offer -> offer.buys().endsWith("lighter"))
                .toList();
        assertThat(gains).isNotEmpty();
        assertThat(sheet.offers().subList(0, gains.size())).isEqualTo(gains);
        sheet.put(gains.get(0));
        assertThat(workspace.draft().typed(gains.get(0).pointer()))
                .isEqualTo(gains.get(0).value());
        turns.finish(workspace);
        assertThat(lightest()).isLessThan(before);
        workspace.undo();
        assertThat(workspace.design()).isEqualTo(design);
    }

    @Test
    void answers_about_another_brief_are_marked_and_come_back_unmarked_with_theirs() {
        eased();
        assertThat(sheet.mark()).isEmpty();
        assertThat(sheet.canAsk()).isFalse();
        List<Offer> known = sheet.offers();
        sheet.put(known.get(0));
        assertThat(sheet.mark()).isEqualTo("as of the earlier brief");
        assertThat(sheet.offers()).isEqualTo(known);
        turns.finish(workspace);
        assertThat(sheet.canAsk()).isTrue();
        workspace.undo();
        assertThat(sheet.mark()).isEmpty();
        assertThat(sheet.offers()).isEqualTo(known);
        assertThat(sheet.canAsk()).isFalse();
    }

    @Test
    void answers_about_another_train_are_marked() {
        eased();
        workspace.choose(workspace.front().orElseThrow().ratings().get(1).train());
        assertThat(sheet.mark()).isEqualTo("of another train than the chosen one");
        assertThat(sheet.canAsk()).isTrue();
        workspace.undo();
        assertThat(sheet.mark()).isEmpty();
    }

    @Test
    void a_changed_brief_ends_what_is_being_searched() {
        Brief asked = workspace.brief();
        sheet.ask();
        new Offer("/weight/limit", "", "11 kg", "", "").put(workspace);
        assertThat(workspace.brief()).isNotEqualTo(asked);
        turns.until(() -> sheet.stage() != Inquiry.BUSY);
        assertThat(sheet.stage()).isEqualTo(Inquiry.STOPPED);
        assertThat(sheet.mark()).isEqualTo("as of the earlier brief");
    }

    @Test
    void stopping_keeps_what_is_known_and_says_how_much_that_is() {
        assertThat(sheet.busy()).isFalse();
        sheet.ask();
        turns.until(() -> !sheet.offers().isEmpty());
        assertThat(sheet.busy()).isTrue();
        List<Offer> known = sheet.offers();
        sheet.stop();
        turns.until(() -> !sheet.busy());
        assertThat(sheet.offers()).containsAll(known);
        assertThat(sheet.stage()).isEqualTo(Inquiry.STOPPED);
        assertThat(sheet.sentence())
                .isEqualTo("Stopped; %d of %d figures are known."
                        .formatted(
                                sheet.offers().size(),
                                CostStep.of(workspace.brief()).size()));
        assertThat(sheet.canAsk()).isTrue();
    }
}
