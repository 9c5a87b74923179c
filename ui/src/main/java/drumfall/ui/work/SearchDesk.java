// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.work;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import drumfall.solver.search.SearchOutcome;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;

/** Runs one search at a time off the event thread; starting another ends the earlier one and silences it. */
public final class SearchDesk implements AutoCloseable {
    private final LongDesk desk;
    private final Searcher searcher;

    /**
     * A desk.
     *
     * @param events runs what watchers are told, one after the other
     * @param searcher finds fronts
     */
    public SearchDesk(Executor events, Searcher searcher) {
        this.desk = new LongDesk(events, "search");
        this.searcher = searcher;
    }

    /**
     * Starts a search in place of any that runs.
     *
     * @param brief the brief
     * @param watcher is told about it
     */
    public void start(Brief brief, SearchWatcher watcher) {
        desk.start(
                turn -> {
                    SearchOutcome outcome = searcher.run(brief, new Telling(turn, watcher), turn::cancelled);
                    turn.tell(() -> watcher.ended(outcome));
                },
                watcher::failed);
    }

    /** Asks the running search to end with what it has; its watcher is told. */
    public void stop() {
        desk.stop();
    }

    /** Ends the running search and forgets it; its watcher is told nothing more. */
    public void drop() {
        desk.drop();
    }

    /** Ends everything. */
    @Override
    public void close() {
        desk.close();
    }

    /** What a search tells between two turns of the event thread is told once. */
    private static final class Telling extends ToldProgress {
        private final LongDesk.Turn turn;
        private final SearchWatcher watcher;
        private final AtomicReference<List<Rating>> front = new AtomicReference<>();

        private Telling(LongDesk.Turn turn, SearchWatcher watcher) {
            super(turn, watcher::progressed);
            this.turn = turn;
            this.watcher = watcher;
        }

        @Override
        public void frontChanged(List<Rating> now) {
            if (front.getAndSet(now) == null) {
                turn.tell(() -> watcher.grew(front.getAndSet(null)));
            }
        }
    }
}
