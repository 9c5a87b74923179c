// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.work;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.Rating;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.search.SearchProgress;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;

/** Runs one search at a time off the event thread; starting another ends the earlier one and silences it. */
public final class SearchDesk implements AutoCloseable {
    private final Executor events;
    private final Searcher searcher;
    private final ExecutorService thread = Executors.newSingleThreadExecutor(SearchDesk::background);
    private final AtomicReference<Run> current = new AtomicReference<>();

    /**
     * A desk.
     *
     * @param events runs what watchers are told, one after the other
     * @param searcher finds fronts
     */
    public SearchDesk(Executor events, Searcher searcher) {
        this.events = events;
        this.searcher = searcher;
    }

    private static Thread background(Runnable work) {
        Thread thread = new Thread(work, "search");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Starts a search in place of any that runs.
     *
     * @param brief the brief
     * @param watcher is told about it
     */
    public void start(Brief brief, SearchWatcher watcher) {
        Run run = new Run(brief, watcher);
        Run earlier = current.getAndSet(run);
        if (earlier != null) {
            earlier.cancelled = true;
        }
        thread.execute(run);
    }

    /** Asks the running search to end with what it has; its watcher is told. */
    public void stop() {
        Run run = current.get();
        if (run != null) {
            run.cancelled = true;
        }
    }

    /** Ends the running search and forgets it; its watcher is told nothing more. */
    public void drop() {
        stop();
        current.set(null);
    }

    /** Ends everything. */
    @Override
    public void close() {
        drop();
        thread.shutdown();
    }

    /** One search; what it tells between two turns of the event thread is told once. */
    private final class Run implements Runnable, SearchListener {
        private final Brief brief;
        private final SearchWatcher watcher;
        private final AtomicReference<SearchProgress> progress = new AtomicReference<>();
        private final AtomicReference<List<Rating>> front = new AtomicReference<>();
        private volatile boolean cancelled;

        private Run(Brief brief, SearchWatcher watcher) {
            this.brief = brief;
            this.watcher = watcher;
        }

        @Override
        public void run() {
            if (current.get() != this) {
                return;
            }
            try {
                SearchOutcome outcome = searcher.run(brief, this, () -> cancelled);
                tell(() -> watcher.ended(outcome));
            } catch (RuntimeException | Error fault) {
                System.getLogger(SearchDesk.class.getName())
                        .log(System.Logger.Level.WARNING, "A search broke down.", fault);
                tell(() -> watcher.failed(fault));
            }
        }

        @Override
        public void progressed(SearchProgress now) {
            if (progress.getAndSet(now) == null) {
                tell(() -> watcher.progressed(progress.getAndSet(null)));
            }
        }

        @Override
        public void frontChanged(List<Rating> now) {
            if (front.getAndSet(now) == null) {
                tell(() -> watcher.grew(front.getAndSet(null)));
            }
        }

        private void tell(Runnable message) {
            events.execute(() -> {
                if (current.get() == this) {
                    message.run();
                }
            });
        }
    }
}
