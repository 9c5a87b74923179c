// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Locks;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.layout.Layout;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.placing.KeptHoles;
import drumfall.solver.train.Train;
import drumfall.ui.design.BriefDraft;
import drumfall.ui.design.Design;
import drumfall.ui.design.DrawnArbors;
import drumfall.ui.presenter.StripFigure.Kind;
import drumfall.ui.work.SearchDesk;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The one state that all places of the window share, and every change that can be made to it.
 *
 * <p>Used from one thread, the event thread. Changes of brief, locks and choice are steps that can be undone; a change of the
 * brief that is in order starts a search.
 */
public final class Workspace implements TrainStripActions {
    private final History history;
    private final Choice choice;
    private final FrontBoard board;
    private final List<Consumer<Aspect>> listeners = new ArrayList<>();
    private final Attention attention = new Attention(this::tell);
    private UnitSystem units = UnitSystem.METRIC;
    private News news = News.NONE;
    /** Until the maker has chosen, held or tried something, the first train of the front is chosen. */
    private boolean choiceIsOurs = true;

    /**
     * A workspace on a design.
     *
     * @param design the design
     * @param fallback a brief in order, rated against until the design's own is in order
     * @param desk searches
     */
    public Workspace(Design design, Brief fallback, SearchDesk desk) {
        this.history = new History(design);
        this.choice = new Choice(design.draft().brief().orElse(fallback));
        this.board = new FrontBoard(desk, this::tell, this::frontArrived);
        this.choiceIsOurs = design.chosen().isEmpty();
        choice.choose(design.chosen());
    }

    /**
     * Adds whoever is to be told what changed.
     *
     * @param listener is given the part that changed, after the change
     */
    public void listen(Consumer<Aspect> listener) {
        listeners.add(listener);
    }

    private void tell(Aspect aspect) {
        List.copyOf(listeners).forEach(listener -> listener.accept(aspect));
    }

    /** The design on the screen. */
    public Design design() {
        return history.present();
    }

    /** The brief as typed. */
    public BriefDraft draft() {
        return design().draft();
    }

    /** The last brief that was in order: what is rated against and searched for. */
    public Brief brief() {
        return choice.brief();
    }

    /** The chosen train rated against {@link #brief()}. */
    public Optional<Rating> chosen() {
        return choice.rating();
    }

    /** The tried train rated against {@link #brief()}. */
    public Optional<Rating> trial() {
        return choice.trial();
    }

    /** The trains shown, if there are any to show. */
    public Optional<Front> front() {
        return board.shown();
    }

    /** Whether the front shown answers an earlier brief than the one on the sheet. */
    public boolean frontIsEarlier() {
        return board.shown()
                .map(front -> draft().brief()
                        .filter(brief -> SameDemands.of(brief, front.brief()))
                        .isEmpty())
                .orElse(false);
    }

    /** What the search is doing. */
    public SearchState search() {
        return board.search();
    }

    /** What is pointed at. */
    public Highlight highlight() {
        return attention.on(chosen().map(Rating::train));
    }

    /** The train of the front that is pointed at. */
    public Optional<Train> pointedTrain() {
        return attention.train();
    }

    /** Which units are shown. */
    public UnitSystem units() {
        return units;
    }

    /** The line of news. */
    public News news() {
        return news;
    }

    /** What undoing would take back. */
    public Optional<String> undoName() {
        return history.undoName();
    }

    /** What redoing would do again. */
    public Optional<String> redoName() {
        return history.redoName();
    }

    /** Everything the train strip shows. */
    public TrainStripContent strip() {
        return new TrainStripContent(chosen(), trial(), brief(), highlight(), units, frontIsEarlier());
    }

    /** Searches for the brief on the sheet if it is in order. */
    public void solve() {
        draft().brief().ifPresent(board::start);
    }

    /** Ends the search with what it has. */
    public void stopSearch() {
        board.stop();
    }

    /** Shows what the running search has found so far in place of the earlier front. */
    public void showGrowing() {
        board.showGrowing();
    }

    /**
     * Changes the brief as one step.
     *
     * @param name what is done, in words
     * @param changed the brief after it
     * @param series steps of one series in a row count as one
     */
    void edit(String name, BriefDraft changed, Optional<String> series) {
        if (history.step(name, design().with(changed), series)) {
            setNews(News.NONE);
            designChanged();
        }
    }

    /** Ends a series of edits: the next one is a step of its own. */
    public void sealEdit() {
        history.seal();
    }

    /** Takes back the last step. */
    public void undo() {
        Optional<String> name = undoName();
        if (history.undo()) {
            movedTo(Texts.of("news.undone", name.orElseThrow()));
        }
    }

    /** Does again what was taken back. */
    public void redo() {
        Optional<String> name = redoName();
        if (history.redo()) {
            movedTo(Texts.of("news.redone", name.orElseThrow()));
        }
    }

    private void movedTo(String told) {
        choiceIsOurs = design().chosen().isEmpty();
        choice.dropTrial();
        designChanged();
        setNews(News.told(told));
    }

    /** Puts another design on the screen; there is nothing to undo then. */
    public void open(Design design) {
        history.restart(design);
        choiceIsOurs = design.chosen().isEmpty();
        board.clear();
        choice.choose(Optional.empty());
        setNews(News.NONE);
        designChanged();
    }

    /** The design was saved, or is no longer: whoever shows that is told. */
    void designSaved() {
        tell(Aspect.DESIGN);
    }

    private void designChanged() {
        Optional<Brief> accepted = draft().brief();
        boolean other = accepted.filter(brief -> board.asked()
                        .filter(asked -> SameDemands.of(brief, asked))
                        .isEmpty())
                .isPresent();
        accepted.ifPresent(choice::follow);
        choice.choose(design().chosen());
        tell(Aspect.BRIEF);
        tell(Aspect.CHOICE);
        tell(Aspect.TRIAL);
        tell(Aspect.DESIGN);
        if (other) {
            board.start(accepted.get());
        }
        tell(Aspect.FRONT);
    }

    /**
     * Chooses a train.
     *
     * @param train the train
     */
    public void choose(Train train) {
        choiceIsOurs = false;
        if (history.step(Texts.of("step.choose"), design().choosing(train), Optional.empty())) {
            choiceChanged();
        }
    }

    /** Holds arbors drawn in a layout, as one step. */
    void draw(String name, DrawnArbors arbors) {
        if (history.step(name, design().drawing(arbors), Optional.empty())) {
            tell(Aspect.DESIGN);
        }
    }

    private void choiceChanged() {
        choice.choose(design().chosen());
        tell(Aspect.CHOICE);
        tell(Aspect.TRIAL);
        tell(Aspect.DESIGN);
    }

    private void frontArrived() {
        Optional<Train> first = board.shown()
                .filter(front -> !front.ratings().isEmpty())
                .map(front -> front.ratings().get(0).train());
        if (choiceIsOurs && first.isPresent() && !first.equals(design().chosen())) {
            history.replace(design().choosing(first.get()));
            choiceChanged();
        }
    }

    /**
     * Points at a train of the front.
     *
     * @param train the train, or none
     */
    public void pointAt(Optional<Train> train) {
        attention.pointAt(train);
    }

    /**
     * Points at an arbor.
     *
     * @param arbor its number, or none
     */
    public void pointAtArbor(Optional<Integer> arbor) {
        attention.pointAt(new Highlight(Optional.empty(), arbor));
    }

    @Override
    public void hover(Optional<StripFigure> figure) {
        attention.pointAt(Pointing.at(figure, chosen().map(Rating::train)));
    }

    @Override
    public void lookInto(MeshPlace place) {
        attention.lookInto(place);
    }

    @Override
    public void toggleLock(StripFigure figure) {
        choiceIsOurs = choiceIsOurs && chosen().isEmpty();
        Locks locks = draft().locks();
        if (LockEdits.holds(locks, figure)) {
            edit(
                    Texts.of("step.release", Names.of(figure)),
                    draft().withLocks(LockEdits.releasing(locks, figure)),
                    Optional.empty());
            return;
        }
        Optional<Train> train = trial().or(this::chosen).map(Rating::train);
        train.ifPresent(known -> edit(
                Texts.of("step.hold", Names.of(figure)),
                draft().withLocks(LockEdits.holding(locks, figure, known)),
                Optional.empty()));
    }

    /**
     * Holds the holes of the plates on which the chosen train stands, as one step: every other train found stands on them
     * too. What was drawn by hand is held by the brief from then on.
     *
     * @param layout where the chosen train stands
     */
    void keepHoles(Layout layout) {
        Optional<Train> train = chosen().map(Rating::train);
        if (train.isEmpty() || draft().brief().isEmpty()) {
            return;
        }
        choiceIsOurs = false;
        Brief kept = KeptHoles.of(draft().brief().get(), train.get(), layout);
        Design next = design().drawing(new DrawnArbors(train.get(), List.of())).with(draft().keepingHolesOf(kept));
        if (history.step(Texts.of("step.keepholes"), next, Optional.empty())) {
            setNews(News.NONE);
            designChanged();
        }
    }

    /** Lets everything go that is held. */
    public void releaseAll() {
        edit(Texts.of("step.releaseall"), draft().withLocks(Locks.NONE), Optional.empty());
    }

    @Override
    public void tryCount(StripFigure figure, String typed) {
        try {
            if (figure.kind() == Kind.MESHES_ABOVE || figure.kind() == Kind.MESHES_BELOW) {
                holdMeshes(figure, TrialTrains.meshes(typed));
            } else {
                attempt(figure, typed);
            }
        } catch (TrialTrains.RefusedTrial refused) {
            setNews(News.trouble(refused.getMessage()));
        }
    }

    private void holdMeshes(StripFigure figure, int count) {
        Locks locks = draft().locks();
        boolean above = figure.kind() == Kind.MESHES_ABOVE;
        Locks held = above ? locks.withMeshesAbove(Optional.of(count)) : locks.withMeshesBelow(Optional.of(count));
        edit(Texts.of("step.hold", Names.of(figure)), draft().withLocks(held), Optional.empty());
    }

    private void attempt(StripFigure figure, String typed) throws TrialTrains.RefusedTrial {
        Optional<Train> base = trial().or(this::chosen).map(Rating::train);
        if (base.isEmpty()) {
            return;
        }
        choiceIsOurs = false;
        Train tried = TrialTrains.with(base.get(), figure, typed);
        if (chosen().map(Rating::train).equals(Optional.of(tried))) {
            dropTrial();
        } else if (choice.attempt(tried)) {
            setNews(News.NONE);
            tell(Aspect.TRIAL);
        } else {
            setNews(News.trouble(Texts.of("trial.beyond", typed.strip())));
        }
    }

    @Override
    public void acceptTrial() {
        trial().map(Rating::train).ifPresent(train -> {
            choiceIsOurs = false;
            history.step(Texts.of("step.accept"), design().choosing(train), Optional.empty());
            choiceChanged();
        });
    }

    @Override
    public void dropTrial() {
        choice.dropTrial();
        tell(Aspect.TRIAL);
    }

    /**
     * Shows other units.
     *
     * @param system which
     */
    public void setUnits(UnitSystem system) {
        units = system;
        tell(Aspect.UNITS);
    }

    /**
     * Tells the maker something.
     *
     * @param next what
     */
    public void setNews(News next) {
        if (!next.equals(news)) {
            news = next;
            tell(Aspect.NEWS);
        }
    }
}
