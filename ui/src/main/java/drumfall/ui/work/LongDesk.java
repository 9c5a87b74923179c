// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.work;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/** Does one long job at a time off the event thread; starting another ends the earlier one and silences it. */
public final class LongDesk implements AutoCloseable {
    private final Executor events;
    private final ExecutorService thread;
    private final AtomicReference<Run> current = new AtomicReference<>();

    /** A job that tells what it finds while it goes on. */
    @FunctionalInterface
    public interface Job {
        /**
         * Does the job, off the event thread.
         *
         * @param turn says whether it is still wanted, and hands on what it tells
         */
        void run(Turn turn);
    }

    /** A job's turn at the desk. */
    public interface Turn {
        /** Whether the job should end with what it has. */
        boolean cancelled();

        /**
         * Runs something on the thread of events, unless another job was started meanwhile.
         *
         * @param message what to run
         */
        void tell(Runnable message);
    }

    /**
     * A desk with a thread of its own.
     *
     * @param events runs what jobs tell, one after the other
     * @param name of the thread
     */
    public LongDesk(Executor events, String name) {
        this.events = events;
        this.thread = Executors.newSingleThreadExecutor(work -> {
            Thread made = new Thread(work, name);
            made.setDaemon(true);
            return made;
        });
    }

    /**
     * Starts a job in place of any that runs.
     *
     * @param job what is to be done
     * @param broken gets what went wrong, if something does
     */
    public void start(Job job, Consumer<Throwable> broken) {
        Run run = new Run(job, broken);
        Run earlier = current.getAndSet(run);
        if (earlier != null) {
            earlier.cancelled = true;
        }
        thread.execute(run);
    }

    /** Asks the running job to end with what it has; it still tells that. */
    public void stop() {
        Run run = current.get();
        if (run != null) {
            run.cancelled = true;
        }
    }

    /** Ends the running job and forgets it; it tells nothing more. */
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

    private final class Run implements Runnable, Turn {
        private final Job job;
        private final Consumer<Throwable> broken;
        private volatile boolean cancelled;

        private Run(Job job, Consumer<Throwable> broken) {
            this.job = job;
            this.broken = broken;
        }

        @Override
        public void run() {
            if (current.get() != this) {
                return;
            }
            try {
                job.run(this);
            } catch (RuntimeException | Error fault) {
                System.getLogger(LongDesk.class.getName())
                        .log(System.Logger.Level.WARNING, "A long job broke down.", fault);
                tell(() -> broken.accept(fault));
            }
        }

        @Override
        public boolean cancelled() {
            return cancelled;
        }

        @Override
        public void tell(Runnable message) {
            events.execute(() -> {
                if (current.get() == this) {
                    message.run();
                }
            });
        }
    }
}
