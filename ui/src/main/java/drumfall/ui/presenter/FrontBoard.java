// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.search.SearchProgress;
import drumfall.ui.presenter.Front.Standing;
import drumfall.ui.work.SearchDesk;
import drumfall.ui.work.SearchWatcher;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Holds the front shown: the last finished one stays until a newer one is there or the maker asks to see it grow. */
final class FrontBoard implements SearchWatcher {
    private final SearchDesk desk;
    private final Consumer<Aspect> tell;
    private final Runnable arrived;
    private final ProvedFronts proved = new ProvedFronts();
    private Optional<Brief> asked = Optional.empty();
    private Optional<Front> finished = Optional.empty();
    private Optional<Front> growing = Optional.empty();
    private SearchState search = SearchState.IDLE;
    private boolean watching;

    FrontBoard(SearchDesk desk, Consumer<Aspect> tell, Runnable arrived) {
        this.desk = desk;
        this.tell = tell;
        this.arrived = arrived;
    }

    Optional<Brief> asked() {
        return asked;
    }

    SearchState search() {
        return search;
    }

    Optional<Front> shown() {
        boolean earlierStays = finished.isPresent() && !watching;
        return earlierStays ? finished : growing.or(() -> finished);
    }

    void start(Brief brief) {
        asked = Optional.of(brief);
        growing = Optional.empty();
        watching = false;
        Optional<Front> known = proved.of(brief);
        if (known.isPresent()) {
            desk.drop();
            finish(known.get());
            return;
        }
        search = SearchState.STARTED;
        desk.start(brief, this);
        tell.accept(Aspect.SEARCH);
        tell.accept(Aspect.FRONT);
    }

    void stop() {
        desk.stop();
    }

    void clear() {
        desk.drop();
        asked = Optional.empty();
        finished = Optional.empty();
        growing = Optional.empty();
        search = SearchState.IDLE;
    }

    void showGrowing() {
        watching = true;
        tell.accept(Aspect.FRONT);
    }

    @Override
    public void progressed(SearchProgress progress) {
        search = new SearchState(true, Optional.of(progress), search.found());
        tell.accept(Aspect.SEARCH);
    }

    @Override
    public void grew(List<Rating> front) {
        growing = Optional.of(Front.of(asked.orElseThrow(), front, Standing.GROWING));
        search = new SearchState(true, search.progress(), front.size());
        show();
    }

    @Override
    public void ended(SearchOutcome outcome) {
        Brief brief = asked.orElseThrow();
        finish(outcome.fold(
                proved -> Front.of(brief, proved.front(), Standing.PROVED, proved.stepsTimes()),
                stopped -> Front.of(brief, stopped.front(), Standing.STOPPED, stopped.stepsTimes()),
                none -> new Front(brief, List.of(), Standing.NO_TRAIN, Optional.of(none.clash()), 1)));
    }

    @Override
    public void failed(Throwable fault) {
        finish(Front.of(asked.orElseThrow(), growing.map(Front::ratings).orElse(List.of()), Standing.FAILED));
    }

    private void finish(Front front) {
        proved.keep(front);
        finished = Optional.of(front);
        growing = Optional.empty();
        watching = false;
        search = SearchState.IDLE;
        show();
    }

    private void show() {
        arrived.run();
        tell.accept(Aspect.SEARCH);
        tell.accept(Aspect.FRONT);
    }
}
