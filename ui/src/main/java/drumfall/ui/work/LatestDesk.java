// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.work;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Does small jobs off the event thread, the latest only: one that is overtaken is silenced, and not begun if it waits. */
public final class LatestDesk implements AutoCloseable {
    private final Executor events;
    private final ExecutorService thread;
    private final AtomicReference<Object> latest = new AtomicReference<>();

    /**
     * A desk with a thread of its own.
     *
     * @param events runs what comes of the jobs, one after the other
     * @param name of the thread
     */
    public LatestDesk(Executor events, String name) {
        this.events = events;
        this.thread = Executors.newSingleThreadExecutor(work -> {
            Thread made = new Thread(work, name);
            made.setDaemon(true);
            return made;
        });
    }

    /**
     * Does a job in place of any that is not done yet.
     *
     * @param job what is to be done
     * @param done gets what came of it
     * @param broken gets what went wrong instead
     */
    public <T> void ask(Supplier<T> job, Consumer<T> done, Consumer<Throwable> broken) {
        Object ticket = new Object();
        latest.set(ticket);
        thread.execute(() -> {
            if (latest.get() == ticket) {
                run(ticket, job, done, broken);
            }
        });
    }

    private <T> void run(Object ticket, Supplier<T> job, Consumer<T> done, Consumer<Throwable> broken) {
        try {
            T result = job.get();
            tell(ticket, () -> done.accept(result));
        } catch (RuntimeException | Error fault) {
            System.getLogger(LatestDesk.class.getName()).log(System.Logger.Level.WARNING, "A job broke down.", fault);
            tell(ticket, () -> broken.accept(fault));
        }
    }

    private void tell(Object ticket, Runnable message) {
        events.execute(() -> {
            if (latest.get() == ticket) {
                message.run();
            }
        });
    }

    /** Silences whatever is asked for. */
    public void drop() {
        latest.set(null);
    }

    @Override
    public void close() {
        drop();
        thread.shutdown();
    }
}
