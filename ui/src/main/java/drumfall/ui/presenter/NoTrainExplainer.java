// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Easing;
import drumfall.solver.explain.WhyNoTrain;
import drumfall.ui.work.LongDesk;
import drumfall.ui.work.ToldProgress;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Explains fully why the brief of the front has no train, in the background and only when the maker asks.
 *
 * <p>Used from the event thread. What was explained to the end is kept, so that undoing an edit brings it back.
 */
public final class NoTrainExplainer {
    private final Workspace workspace;
    private final LongDesk desk;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Map<ObjectNode, Reasons> kept = new HashMap<>();
    private Optional<Reasons> reasons = Optional.empty();

    /**
     * An explainer.
     *
     * @param workspace the shared state
     * @param desk searches
     */
    public NoTrainExplainer(Workspace workspace, LongDesk desk) {
        this.workspace = workspace;
        this.desk = desk;
        workspace.listen(this::changed);
    }

    /**
     * Adds whoever is to be told that more is known.
     *
     * @param listener is told after the change
     */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    private void changed(Aspect aspect) {
        switch (aspect) {
            case FRONT, BRIEF -> follow();
            case UNITS -> tell();
            default -> {}
        }
    }

    /** What is explained is the front's brief; once the maker changes the brief, what is still to come is given up. */
    private void follow() {
        Optional<Brief> shown = workspace
                .front()
                .filter(front -> front.standing() == Front.Standing.NO_TRAIN)
                .map(Front::brief);
        boolean same = shown.isPresent() == reasons.isPresent()
                && shown.map(brief ->
                                SameDemands.of(brief, reasons.orElseThrow().brief()))
                        .orElse(true);
        if (!same) {
            desk.drop();
            reasons = shown.map(brief -> kept.getOrDefault(SameDemands.nameless(brief), Reasons.unasked(brief)));
            tell();
        } else if (workspace.frontIsEarlier()) {
            stop();
        }
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    /** Whether there is something to explain that is not being explained or known already. */
    public boolean canExplain() {
        return reasons.filter(known -> known.stage() != Inquiry.BUSY && known.stage() != Inquiry.DONE)
                .isPresent();
    }

    /** Explains why the front's brief has no train, from the beginning. */
    public void explain() {
        if (canExplain()) {
            Brief brief = reasons.orElseThrow().brief();
            reasons = Optional.of(Reasons.unasked(brief).at(Inquiry.BUSY));
            desk.start(turn -> explain(brief, turn), fault -> become(known -> known.at(Inquiry.FAILED)));
            tell();
        }
    }

    /** Off the event thread. */
    private void explain(Brief brief, LongDesk.Turn turn) {
        int figures = Easing.of(brief).size();
        WhyNoTrain why = WhyNoTrain.of(
                brief,
                known -> turn.tell(() -> become(
                        reached -> known.complete() ? reached.with(known).listed(figures) : reached.with(known))),
                found -> turn.tell(
                        () -> become(reached -> reached.listed(figures).with(found))),
                new ToldProgress(turn, progress -> {}),
                turn::cancelled);
        boolean whole = why.nearest().size() == figures && !turn.cancelled();
        turn.tell(() -> {
            become(reached -> reached.listed(figures).with(why.clashes()).at(whole ? Inquiry.DONE : Inquiry.STOPPED));
            reasons.filter(known -> whole).ifPresent(known -> kept.put(SameDemands.nameless(known.brief()), known));
        });
    }

    private void become(UnaryOperator<Reasons> change) {
        reasons = reasons.map(change);
        tell();
    }

    /** Whether an explanation goes on. */
    public boolean busy() {
        return reasons.filter(known -> known.stage() == Inquiry.BUSY).isPresent();
    }

    /** Asks the explanation to end with what it has. */
    public void stop() {
        desk.stop();
    }

    /** What there is to show; empty unless it is proved that the front's brief has no train. */
    public Optional<ReasonsView> view() {
        return reasons.map(known -> ReasonsView.of(known, workspace.units()));
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
