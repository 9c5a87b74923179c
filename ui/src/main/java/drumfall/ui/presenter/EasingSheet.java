// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Cost;
import drumfall.solver.explain.CostStep;
import drumfall.solver.explain.DemandCosts;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.search.SearchProgress;
import drumfall.solver.train.Train;
import drumfall.ui.work.LongDesk;
import drumfall.ui.work.ToldProgress;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The sheet of easing: what the chosen train could save in weight if one figure of the brief were eased.
 *
 * <p>Used from the event thread. Every figure is a search of its own, so nothing is searched until the maker asks. What was
 * answered stays, marked once brief or train are others, until the maker asks again; what was answered to the end comes back
 * with its brief and train.
 */
public final class EasingSheet {
    private final Workspace workspace;
    private final LongDesk desk;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Map<Question, EasingState> kept = new HashMap<>();
    private Optional<Asked> asked = Optional.empty();
    private EasingState state = EasingState.UNASKED;

    /** What was asked about, names aside. */
    private record Question(ObjectNode brief, Train train) {}

    /** What was asked about. */
    private record Asked(Brief brief, Train train) {
        Question question() {
            return new Question(SameDemands.nameless(brief), train);
        }
    }

    /**
     * A sheet.
     *
     * @param workspace the shared state
     * @param desk searches
     */
    public EasingSheet(Workspace workspace, LongDesk desk) {
        this.workspace = workspace;
        this.desk = desk;
        workspace.listen(this::changed);
    }

    /**
     * Adds whoever is to be told that something changed.
     *
     * @param listener is told after the change
     */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    private void changed(Aspect aspect) {
        switch (aspect) {
            case BRIEF, CHOICE -> follow();
            case UNITS, FRONT -> tell();
            default -> {}
        }
    }

    /** Answers about another brief would cost the new search its time. */
    private void follow() {
        if (state.stage() == Inquiry.BUSY && ofEarlierBrief()) {
            desk.stop();
        }
        if (state.stage() != Inquiry.BUSY) {
            present().filter(now -> kept.containsKey(now.question())).ifPresent(now -> {
                asked = Optional.of(now);
                state = kept.get(now.question());
            });
        }
        tell();
    }

    private Optional<Asked> present() {
        return workspace.chosen().map(rating -> new Asked(workspace.brief(), rating.train()));
    }

    private boolean ofEarlierBrief() {
        return asked.filter(known -> workspace
                        .draft()
                        .brief()
                        .filter(brief -> SameDemands.of(brief, known.brief()))
                        .isEmpty())
                .isPresent();
    }

    private boolean ofAnotherTrain() {
        return asked.isPresent()
                && !asked.map(Asked::train).equals(workspace.chosen().map(Rating::train));
    }

    /** Whether there is a train that can be asked about and is not; while a search runs a better one may come. */
    public boolean canAsk() {
        if (workspace.search().running()) {
            return false;
        }
        boolean known = asked.isPresent()
                && !ofEarlierBrief()
                && !ofAnotherTrain()
                && (state.stage() == Inquiry.DONE || state.stage() == Inquiry.BUSY);
        return !known && workspace.chosen().filter(Rating::feasible).isPresent();
    }

    /** Asks about the chosen train, in place of whatever was asked before. */
    public void ask() {
        if (canAsk()) {
            Asked now = present().orElseThrow();
            asked = Optional.of(now);
            state = EasingState.STARTED;
            // A front that answers an earlier brief says nothing about the steps of this one.
            int stepsTimes = workspace
                    .front()
                    .filter(front -> front.brief().equals(now.brief()))
                    .map(Front::stepsTimes)
                    .orElse(1);
            desk.start(turn -> answer(now, stepsTimes, turn), fault -> become(state.at(Inquiry.FAILED)));
            tell();
        }
    }

    /** Off the event thread. */
    private void answer(Asked about, int stepsTimes, LongDesk.Turn turn) {
        int all = CostStep.of(about.brief()).size();
        turn.tell(() -> become(state.outOf(all)));
        Consumer<SearchProgress> nobody = progress -> {};
        List<Cost> costs = DemandCosts.of(
                about.brief(),
                stepsTimes,
                about.train(),
                cost -> turn.tell(() -> become(state.with(cost))),
                new ToldProgress(turn, nobody),
                turn::cancelled);
        boolean whole = costs.size() == all && !turn.cancelled();
        turn.tell(() -> {
            become(state.at(whole ? Inquiry.DONE : Inquiry.STOPPED));
            if (whole) {
                kept.put(about.question(), state);
            }
        });
    }

    private void become(EasingState next) {
        state = next;
        tell();
    }

    /** Whether figures are being eased. */
    public boolean busy() {
        return state.stage() == Inquiry.BUSY;
    }

    /** Asks the searches to end; what is known stays. */
    public void stop() {
        desk.stop();
    }

    /** How far the answers are. */
    public Inquiry stage() {
        return state.stage();
    }

    /** Share of the figures that are answered, from 0 to 1; 0 if that is not known. */
    public double done() {
        return state.all() == 0 ? 0 : (double) state.costs().size() / state.all();
    }

    /** What is known, the largest gain first, otherwise in the order of the brief. */
    public List<Offer> offers() {
        return state.costs().stream()
                .sorted(Comparator.comparingDouble(Cost::gain).reversed())
                .map(cost -> Offer.of(cost, workspace.units()))
                .toList();
    }

    /** What is being asked about: the train and its weight; empty before anything is asked. */
    public String about() {
        return asked.map(EasingSheet::words).orElse("");
    }

    /** Eased briefs are searched in all the room that their frames have. */
    private static String words(Asked known) {
        boolean roomCounts = known.brief().frame().least().isPresent();
        return Texts.of(roomCounts ? "easing.about.room" : "easing.about", known.train());
    }

    /** That the answers are about another brief or train than those on the screen; empty if they are not. */
    public String mark() {
        if (ofEarlierBrief()) {
            return Texts.of("easing.earlier");
        }
        return ofAnotherTrain() ? Texts.of("easing.othertrain") : "";
    }

    /** One sentence on how things are, with what to do next. */
    public String sentence() {
        return switch (state.stage()) {
            case BUSY -> Texts.of("easing.busy", state.costs().size(), state.all());
            case STOPPED -> Texts.of("easing.stopped", state.costs().size(), state.all());
            case FAILED -> Texts.of("easing.failed");
            case DONE ->
                Texts.of(state.costs().stream().anyMatch(cost -> cost.gain() > 0) ? "easing.done" : "easing.none");
            case UNASKED -> unasked();
        };
    }

    private String unasked() {
        Optional<Rating> chosen = workspace.chosen();
        if (chosen.isEmpty()) {
            return Texts.of("easing.notrain") + " " + Texts.of("easing.notrain.next");
        }
        if (workspace.search().running()) {
            return Texts.of("easing.searching");
        }
        return chosen.get().feasible()
                ? Texts.of("easing.unasked")
                : Texts.of("easing.misses") + " " + Texts.of("easing.misses.next");
    }

    /** Which units are shown. */
    public UnitSystem units() {
        return workspace.units();
    }

    /**
     * Puts an offered value into the brief, as a step that can be undone; the search starts by itself.
     *
     * @param offer the value
     */
    public void put(Offer offer) {
        offer.put(workspace);
    }
}
