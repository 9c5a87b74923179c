// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.explain.Standing;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.LeastRooms;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.train.Train;
import drumfall.ui.work.LatestDesk;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Why the tried train is not on the front: the demands it misses, or the trains of the front that beat it and in what.
 *
 * <p>Used from the event thread. Demands and objectives are held against the front at once; only where nothing on a proved
 * front beats the train its arbors are placed, off the event thread. Where the brief wants the movement small, they are placed
 * first: what it takes counts beside the objectives.
 */
public final class TriedTrain {
    private final Workspace workspace;
    private final LatestDesk desk;
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<Question> placing = Optional.empty();
    private Placed placed = Placed.SOUGHT;
    private AtomicBoolean cancelled = new AtomicBoolean();

    private record Question(Brief brief, Train train) {}

    /** Whether a train's arbors have places. */
    enum Places {
        SOUGHT,
        FOUND,
        NONE,
        UNKNOWN
    }

    /**
     * What came of placing.
     *
     * @param places whether there are places
     * @param roomed the rating with the room that the train takes, where that counts and there are places
     */
    private record Placed(Places places, Optional<Rating> roomed) {
        static final Placed SOUGHT = new Placed(Places.SOUGHT, Optional.empty());
        static final Placed UNKNOWN = new Placed(Places.UNKNOWN, Optional.empty());
    }

    /**
     * A tried train.
     *
     * @param workspace the shared state
     * @param desk places arbors
     */
    public TriedTrain(Workspace workspace, LatestDesk desk) {
        this.workspace = workspace;
        this.desk = desk;
        workspace.listen(this::changed);
    }

    /**
     * Adds whoever is to be told that there is something else to say.
     *
     * @param listener is told after the change
     */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    private void changed(Aspect aspect) {
        switch (aspect) {
            case TRIAL, CHOICE, FRONT, BRIEF, UNITS -> {
                follow();
                tell();
            }
            default -> {}
        }
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    private void follow() {
        Optional<Question> next = workspace
                .trial()
                .filter(rating -> roomCounts(rating) || nothingBeats(rating))
                .map(rating -> new Question(workspace.brief(), rating.train()));
        if (next.equals(placing)) {
            return;
        }
        placing = next;
        cancelled.set(true);
        cancelled = new AtomicBoolean();
        placed = Placed.SOUGHT;
        next.ifPresentOrElse(this::place, desk::drop);
    }

    private void place(Question question) {
        AtomicBoolean stop = cancelled;
        desk.ask(() -> placed(question, stop), this::keep, fault -> keep(Placed.UNKNOWN));
    }

    /** Off the event thread. */
    private static Placed placed(Question question, AtomicBoolean stop) {
        TrainRater rater = new TrainRater(question.brief());
        if (question.brief().frame().least().isEmpty()) {
            boolean found = new TrainPlacing(rater).placeable(question.train(), stop::get);
            return new Placed(found ? Places.FOUND : Places.NONE, Optional.empty());
        }
        Rating plain = rater.rate(question.train());
        Rating roomed = LeastRooms.roomed(rater, plain, stop::get);
        return roomed.cell().equals(plain.cell())
                ? new Placed(Places.NONE, Optional.empty())
                : new Placed(Places.FOUND, Optional.of(roomed));
    }

    private void keep(Placed answer) {
        placed = answer;
        tell();
    }

    /** The front if it answers the brief that the tried train is rated against. */
    private Optional<Front> front() {
        return workspace.front().filter(front -> !workspace.frontIsEarlier());
    }

    private boolean roomCounts(Rating rating) {
        return rating.feasible()
                && front().isPresent()
                && workspace.brief().frame().least().isPresent();
    }

    private boolean nothingBeats(Rating rating) {
        return front().filter(front -> front.standing() == Front.Standing.PROVED)
                .filter(front ->
                        Standing.of(rating, front.ratings(), front.searched()).place()
                                == Standing.Place.NOT_BEATEN_SO_FAR)
                .isPresent();
    }

    /** How the tried train stands; empty if none is tried. */
    public Optional<TrialStanding> standing() {
        return workspace.trial().map(rating -> {
            Placed known = known(rating);
            return new TrialWords(workspace.brief(), workspace.units())
                    .of(known.roomed().orElse(rating), front(), known.places());
        });
    }

    /** Whoever asks may have been told of another trial before this was. */
    private Placed known(Rating rating) {
        Question question = new Question(workspace.brief(), rating.train());
        return placing.filter(question::equals).map(asked -> placed).orElse(Placed.SOUGHT);
    }
}
