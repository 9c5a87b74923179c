// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Arrangement;
import drumfall.solver.brief.Brief;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.LayoutOutcome;
import drumfall.solver.layout.Locks;
import drumfall.solver.layout.MovementSize;
import drumfall.solver.layout.place.Placer;
import drumfall.solver.rating.Rating;
import drumfall.solver.train.Train;
import drumfall.ui.work.LatestDesk;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiFunction;

/**
 * The room that the movements of the front take: each train placed off the event thread, one after the other, while
 * somebody looks at it; as the brief arranges them, with arbors where the maker drew them.
 *
 * <p>Used from the event thread.
 */
public final class FrontSizes {
    private final Workspace workspace;
    private final BiFunction<Brief, Train, Optional<LayoutNeed>> needs;
    private final LatestDesk desk;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Map<Question, Optional<MovementSize>> known = new HashMap<>();
    private Optional<Brief> brief = Optional.empty();
    private Optional<Question> asked = Optional.empty();
    private AtomicBoolean cancelled = new AtomicBoolean();
    private boolean wanted;

    /** What placing answers. */
    private record Question(Brief brief, Train train, Locks locks) {}

    /**
     * Sizes of a workspace's front.
     *
     * @param workspace the shared state
     * @param needs what a layout of a train must meet under a brief, the places drawn here aside; empty if the train lacks
     *     parts that are to be placed; called off the event thread
     * @param desk places
     */
    public FrontSizes(Workspace workspace, BiFunction<Brief, Train, Optional<LayoutNeed>> needs, LatestDesk desk) {
        this.workspace = workspace;
        this.needs = needs;
        this.desk = desk;
        workspace.listen(aspect -> {
            if (aspect == Aspect.FRONT || aspect == Aspect.DESIGN) {
                follow();
            }
        });
    }

    /**
     * Adds whoever is to be told that a size is known.
     *
     * @param listener is told after the change
     */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    /**
     * Sets whether sizes are looked at; trains are placed only while they are.
     *
     * @param looked whether they are
     */
    public void want(boolean looked) {
        if (wanted != looked) {
            wanted = looked;
            follow();
        }
    }

    /**
     * The room that a train of the front takes; empty if it is not known yet, has no place, or the brief leaves arbors
     * unplaced.
     *
     * @param train the train
     */
    public Optional<MovementSize> of(Train train) {
        return brief.flatMap(of -> known.getOrDefault(question(of, train), Optional.empty()));
    }

    private Question question(Brief of, Train train) {
        return new Question(of, train, workspace.design().drawnIn(train));
    }

    private void follow() {
        Optional<Brief> shown = workspace.front().map(Front::brief);
        if (!shown.equals(brief)) {
            brief = shown;
            known.clear();
        }
        Optional<Question> next = next();
        if (!next.equals(asked)) {
            cancelled.set(true);
            asked = next;
            next.ifPresentOrElse(this::ask, desk::drop);
        }
    }

    private Optional<Question> next() {
        if (!wanted || brief.filter(FrontSizes::isPlaced).isEmpty()) {
            return Optional.empty();
        }
        return workspace.front().stream()
                .flatMap(front -> front.ratings().stream())
                .map(Rating::train)
                .map(train -> question(brief.orElseThrow(), train))
                .filter(question -> !known.containsKey(question))
                .findFirst();
    }

    private static boolean isPlaced(Brief brief) {
        return brief.frame().arrangement() != Arrangement.UNPLACED;
    }

    private void ask(Question question) {
        cancelled = new AtomicBoolean();
        AtomicBoolean stop = cancelled;
        desk.ask(() -> size(question, stop), size -> keep(question, size), fault -> keep(question, Optional.empty()));
    }

    /** Off the event thread. */
    private Optional<MovementSize> size(Question question, AtomicBoolean stop) {
        return needs.apply(question.brief(), question.train())
                .map(need -> Placer.place(PlacedSheet.drawn(need, question.locks()), stop::get))
                .filter(LayoutOutcome.Placed.class::isInstance)
                .map(outcome -> ((LayoutOutcome.Placed) outcome).layout().size());
    }

    private void keep(Question question, Optional<MovementSize> size) {
        known.put(question, size);
        asked = Optional.empty();
        follow();
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
