// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Arrangement;
import drumfall.solver.brief.Brief;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.LayoutOutcome;
import drumfall.solver.layout.LayoutOutcome.NoLayout;
import drumfall.solver.layout.Locks;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.place.Placer;
import drumfall.solver.layout.size.MovementParts;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.why.WhereFromBook;
import drumfall.solver.train.Train;
import drumfall.ui.design.DrawnArbors;
import drumfall.ui.presenter.PlacedState.Seen;
import drumfall.ui.work.LatestDesk;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiFunction;
import java.util.function.Consumer;

/**
 * The layout of the chosen train: placed off the event thread, seen in elevation and section, its arbors drawn by the maker.
 *
 * <p>Used from the event thread. Drawing an arbor and letting it go locks its mesh as a step of the workspace that can be
 * undone; the rest is placed anew, the last layout of the train staying until the next one is there.
 */
public final class PlacedSheet {
    /** How long the centre arbor takes for a turn while the train turns by itself, s. */
    private static final double SECONDS_A_TURN = 90;

    private final Workspace workspace;
    private final BiFunction<Brief, Train, Optional<LayoutNeed>> needs;
    private final LatestDesk desk;
    private final List<Consumer<Change>> listeners = new ArrayList<>();
    private Optional<Question> asked = Optional.empty();
    private AtomicBoolean cancelled = new AtomicBoolean();
    private PlacedState state = new PlacedState.NoTrain();
    private Optional<Integer> hovered = Optional.empty();
    private Optional<Integer> selected = Optional.empty();
    private Optional<PlacedDrag> drag = Optional.empty();
    private boolean turning;
    private double turn;

    /** What changed. */
    public enum Change {
        /** What there is to see. */
        STATE,
        /** Which arbor is pointed at or selected. */
        POINTED,
        /** An arbor on its way. */
        DRAG,
        /** How far the train is turned. */
        TURN,
        /** Whether the train turns by itself. */
        TURNING
    }

    /** What placing answers. */
    private record Question(Brief brief, Train train, Locks locks) {}

    /**
     * A sheet.
     *
     * @param workspace the shared state
     * @param needs what a layout of a train must meet under a brief, the places drawn here aside; empty if the train lacks
     *     parts that are to be placed; called off the event thread
     * @param desk places
     */
    public PlacedSheet(Workspace workspace, BiFunction<Brief, Train, Optional<LayoutNeed>> needs, LatestDesk desk) {
        this.workspace = workspace;
        this.needs = needs;
        this.desk = desk;
        workspace.listen(this::changed);
        follow();
    }

    /**
     * Adds whoever is to be told what changed.
     *
     * @param listener is told after the change
     */
    public void listen(Consumer<Change> listener) {
        listeners.add(listener);
    }

    private void tell(Change change) {
        List.copyOf(listeners).forEach(listener -> listener.accept(change));
    }

    private void changed(Aspect aspect) {
        switch (aspect) {
            case CHOICE, BRIEF, DESIGN -> follow();
            case UNITS -> tell(Change.STATE);
            case HIGHLIGHT -> tell(Change.POINTED);
            default -> {}
        }
    }

    private void follow() {
        Optional<Question> next = workspace
                .chosen()
                .map(Rating::train)
                .map(train -> new Question(workspace.brief(), train, locks(train)));
        if (!next.equals(asked)) {
            ask(next);
        }
    }

    private Locks locks(Train train) {
        return workspace.design().drawnIn(train);
    }

    private void ask(Optional<Question> next) {
        boolean sameTrain = next.isPresent() && asked.map(Question::train).equals(next.map(Question::train));
        cancelled.set(true);
        cancelled = new AtomicBoolean();
        asked = next;
        drag = Optional.empty();
        if (next.isEmpty()) {
            desk.drop();
            select(Optional.empty());
            show(new PlacedState.NoTrain());
            return;
        }
        Optional<Seen> before = sameTrain ? state.seen() : Optional.empty();
        if (!sameTrain) {
            selected = Optional.empty();
        }
        show(new PlacedState.Placing(before));
        Question question = next.get();
        AtomicBoolean stop = cancelled;
        UnitSystem units = workspace.units();
        desk.ask(
                () -> answer(question, before, stop, units),
                this::show,
                fault -> show(new PlacedState.Unplaced(before, Texts.of("placed.broken"))));
    }

    /** Off the event thread. */
    private PlacedState answer(Question question, Optional<Seen> before, AtomicBoolean stop, UnitSystem units) {
        Optional<LayoutNeed> asked = needs.apply(question.brief(), question.train());
        if (asked.isEmpty()) {
            return new PlacedState.Unplaced(
                    Optional.empty(), Texts.of("placed.undrawn") + " " + Texts.of("placed.undrawn.next"));
        }
        LayoutNeed need = drawn(asked.get(), question.locks());
        LayoutOutcome outcome = Placer.place(need, stop::get);
        if (outcome instanceof LayoutOutcome.Placed placed) {
            TrainRater rater = new TrainRater(question.brief());
            Train train = question.train();
            Rating rating = rater.rate(train);
            WhereFromBook book = WhereFromBook.of(rater, rating, Optional.of(placed.layout()));
            return new PlacedState.Placed(
                    new Seen(placed.layout(), train, PlacedFront.of(rater, rating, placed.layout())),
                    placed.merit(),
                    PlacedLeast.of(book),
                    PlacedBob.of(rater, train, placed.layout(), book, units),
                    new PlacedSize(book, placed.layout()));
        }
        String words = outcome instanceof NoLayout none
                ? new PlacedWords(need.parts(), units).none(none)
                : Texts.of("placed.stopped") + " " + Texts.of("placed.stopped.next");
        return new PlacedState.Unplaced(before, words);
    }

    /** Places drawn by hand count before directions that the brief holds. */
    static LayoutNeed drawn(LayoutNeed need, Locks drawn) {
        return drawn.equals(Locks.NONE) ? need : need.with(drawn);
    }

    private void show(PlacedState next) {
        state = next;
        tell(Change.STATE);
    }

    /** What there is to see. */
    public PlacedState state() {
        return state;
    }

    /** Least weight of the train so placed; empty while it is being placed or has no place. */
    public Optional<PlacedLeast> least() {
        return state instanceof PlacedState.Placed placed ? Optional.of(placed.least()) : Optional.empty();
    }

    /** The room that the train takes so placed; empty while it is being placed or has no place. */
    public Optional<PlacedSize> size() {
        return state instanceof PlacedState.Placed placed ? Optional.of(placed.size()) : Optional.empty();
    }

    /** The recommended weight beside the bob so placed; empty while there is no place, or if no weight drives the train. */
    public Optional<PlacedBob> bob() {
        return state instanceof PlacedState.Placed placed ? placed.bob() : Optional.empty();
    }

    /** The units that figures are shown in. */
    public UnitSystem units() {
        return workspace.units();
    }

    /** What is drawn: the layout with what is on its way, if an arbor is being drawn. */
    public Optional<Seen> seen() {
        return state.seen()
                .map(seen -> drag.map(moving -> new Seen(moving.carried(), seen.train(), seen.front()))
                        .orElse(seen));
    }

    /** The words for the layout on the screen. */
    public Optional<PlacedWords> words() {
        return state.seen().map(seen -> new PlacedWords(seen.layout().need().parts(), workspace.units()));
    }

    /** Ends placing with what it has. */
    public void stop() {
        cancelled.set(true);
    }

    /** Places the train again, after a stop. */
    public void placeAgain() {
        ask(asked);
    }

    /** The arbor pointed at, here or in another place of the window. */
    public Optional<Integer> pointed() {
        return hovered.or(() -> workspace.highlight().arbor());
    }

    /**
     * Points at an arbor; the window's other places follow where they know it.
     *
     * @param arbor its number, 0 at the drum, or none
     */
    public void point(Optional<Integer> arbor) {
        if (!arbor.equals(hovered)) {
            hovered = arbor;
            workspace.pointAtArbor(arbor.filter(this::isGoing));
            tell(Change.POINTED);
        }
    }

    private boolean isGoing(int arbor) {
        return parts().filter(parts -> arbor <= parts.escapeArbor()).isPresent();
    }

    private Optional<MovementParts> parts() {
        return state.seen().map(seen -> seen.layout().need().parts());
    }

    /** The arbor that keys move and whose dimensions stay shown. */
    public Optional<Integer> selected() {
        return selected;
    }

    /**
     * Selects an arbor, and looks into the mesh that it drives.
     *
     * @param arbor its number, 0 at the drum, or none
     */
    public void select(Optional<Integer> arbor) {
        if (arbor.equals(selected)) {
            return;
        }
        giveUp();
        selected = arbor;
        arbor.filter(this::isGoing).ifPresent(number -> {
            List<drumfall.solver.brief.MeshPlace> meshes =
                    Attention.places(state.seen().orElseThrow().train());
            workspace.lookInto(meshes.get(Math.min(number, meshes.size() - 1)));
        });
        tell(Change.POINTED);
    }

    /** What is on its way. */
    public Optional<PlacedDrag> drag() {
        return drag;
    }

    /**
     * Draws an arbor towards a point; it goes as near as its arc allows.
     *
     * @param arbor its number; one that cannot be drawn stays
     * @param wished where the maker wants it
     */
    public void drawTo(int arbor, Place wished) {
        Optional<Layout> layout = state.seen().map(Seen::layout);
        if (layout.isPresent() && PlacedDrag.canDraw(layout.get().need().parts(), arbor)) {
            drag = PlacedDrag.towards(layout.get(), arbor, wished).or(() -> drag);
            tell(Change.DRAG);
        }
    }

    /**
     * Moves the selected arbor along its arc; it is placed by {@link #letGo}.
     *
     * @param across which way, positive to the right
     * @param up which way, positive upwards
     * @param angle how far along the arc, rad
     */
    public void nudge(int across, int up, double angle) {
        Optional<Layout> layout = state.seen().map(Seen::layout);
        if (layout.isEmpty()
                || selected.filter(arbor -> PlacedDrag.canDraw(parts().orElseThrow(), arbor))
                        .isEmpty()) {
            return;
        }
        int arbor = selected.get();
        Place middle = layout.get().place(PlacedDrag.anchor(layout.get().need().parts(), arbor));
        Place from = drag.map(PlacedDrag::wished).orElse(layout.get().place(arbor));
        double direction = middle.directionTo(from);
        double along = up * Math.cos(direction) - across * Math.sin(direction);
        double to = direction + (along < 0 ? -angle : angle);
        drawTo(arbor, middle.plus(Place.polar(Math.round(middle.distance(from)), to)));
    }

    /** Puts the arbor on its way down where it is: a step that can be undone, and the rest is placed anew. */
    public void letGo() {
        drag.ifPresent(done -> {
            drag = Optional.empty();
            String name = Texts.of(
                    "step.drawn", words().orElseThrow().arbor(done.drag().arbor()));
            workspace.draw(
                    name,
                    new DrawnArbors(
                            asked.orElseThrow().train(), done.drag().locks().directions()));
            tell(Change.DRAG);
        });
    }

    /** Lets the arbor on its way go back to where it was. */
    public void giveUp() {
        if (drag.isPresent()) {
            drag = Optional.empty();
            tell(Change.DRAG);
        }
    }

    /** Whether anything is locked in the layout. */
    public boolean locked() {
        return asked.filter(question -> !question.locks().equals(Locks.NONE)).isPresent();
    }

    /** Lets every arbor be placed freely again, as a step that can be undone. */
    public void release() {
        asked.filter(question -> locked())
                .ifPresent(question ->
                        workspace.draw(Texts.of("step.releaseplaces"), new DrawnArbors(question.train(), List.of())));
    }

    /**
     * Whether the holes of the plates can be kept: the chosen train stands on them, nothing else is tried, and the brief is in
     * order and does not leave arbors unplaced, for then trains would be found wherever they stand.
     */
    public boolean canKeepHoles() {
        boolean placing = workspace
                .draft()
                .brief()
                .filter(brief -> brief.frame().arrangement() != Arrangement.UNPLACED)
                .isPresent();
        return placing
                && state instanceof PlacedState.Placed
                && workspace.trial().isEmpty()
                && asked.map(Question::train).equals(workspace.chosen().map(Rating::train));
    }

    /** Holds the holes of the plates, so that only trains for these plates are found; a step that can be undone. */
    public void keepHoles() {
        if (canKeepHoles()) {
            workspace.keepHoles(state.seen().orElseThrow().layout());
        }
    }

    /** Whether the train turns by itself. */
    public boolean turning() {
        return turning;
    }

    /**
     * Sets the train turning, or stops it.
     *
     * @param on whether it is to turn
     */
    public void setTurning(boolean on) {
        if (on != turning) {
            turning = on;
            tell(Change.TURNING);
        }
    }

    /**
     * Lets time pass; the train goes on if it was set turning.
     *
     * @param seconds how much
     */
    public void pass(double seconds) {
        if (turning) {
            turn += seconds / SECONDS_A_TURN;
            tell(Change.TURN);
        }
    }

    /** How far the centre arbor is turned, turns. */
    public double turn() {
        return turn;
    }
}
