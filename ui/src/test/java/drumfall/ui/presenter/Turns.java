// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.ui.design.Design;
import drumfall.ui.work.SearchDesk;
import drumfall.ui.work.Searcher;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/** Stands in for the event thread: what other threads post is run by the test when it asks for turns. */
public final class Turns implements Executor {
    /** A test that waits longer hangs; far beyond any search of a small brief, even on a busy machine. */
    private static final int HANGS_AFTER_SECONDS = 120;

    private final BlockingQueue<Runnable> posted = new LinkedBlockingQueue<>();

    @Override
    public void execute(Runnable task) {
        posted.add(task);
    }

    /** Runs what is posted until something holds. */
    public void until(BooleanSupplier condition) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(HANGS_AFTER_SECONDS);
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("What was waited for did not come about.");
            }
            turn();
        }
    }

    private void turn() {
        try {
            Runnable task = posted.poll(20, TimeUnit.MILLISECONDS);
            if (task != null) {
                task.run();
            }
        } catch (InterruptedException interrupted) {
            throw new AssertionError("The test was interrupted.", interrupted);
        }
    }

    /** A workspace on a brief whose searches report here. */
    public Workspace workspace(Brief brief) {
        return workspace(brief, new SearchedOnce());
    }

    /** A workspace on a brief with a searcher of its own. */
    public Workspace workspace(Brief brief, Searcher searcher) {
        return new Workspace(Design.of(brief), brief, new SearchDesk(this, searcher));
    }

    /** Searches until the front of the brief on the sheet is finished. */
    public void solve(Workspace workspace) {
        workspace.solve();
        finish(workspace);
    }

    /** Waits for the front of the brief on the sheet. */
    public void finish(Workspace workspace) {
        until(() -> !workspace.search().running() && workspace.front().isPresent() && !workspace.frontIsEarlier());
    }
}
