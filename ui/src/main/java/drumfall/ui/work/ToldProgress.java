// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.work;

import drumfall.solver.search.SearchListener;
import drumfall.solver.search.SearchProgress;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/** Hands the progress of a long job on; what comes between two turns of the thread of events is told once, the latest. */
public class ToldProgress implements SearchListener {
    private final LongDesk.Turn turn;
    private final Consumer<SearchProgress> watcher;
    private final AtomicReference<SearchProgress> latest = new AtomicReference<>();

    /**
     * Progress of a job.
     *
     * @param turn the job's turn at its desk
     * @param watcher is told on the thread of events
     */
    public ToldProgress(LongDesk.Turn turn, Consumer<SearchProgress> watcher) {
        this.turn = turn;
        this.watcher = watcher;
    }

    @Override
    public void progressed(SearchProgress now) {
        if (latest.getAndSet(now) == null) {
            turn.tell(() -> watcher.accept(latest.getAndSet(null)));
        }
    }
}
