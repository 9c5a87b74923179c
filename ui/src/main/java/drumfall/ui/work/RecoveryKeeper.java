// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.work;

import drumfall.ui.design.DesignFault;
import drumfall.ui.design.RecoveryFolder;
import drumfall.ui.design.Unsaved;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Keeps unsaved work every few seconds, so that whatever ends the program costs a few seconds of edits at most. */
public final class RecoveryKeeper implements AutoCloseable {
    /** Time between two keepings; well under the ten seconds of edits that may be lost. */
    public static final Duration PERIOD = Duration.ofSeconds(3);

    private final RecoveryFolder.Slot slot;
    private final Supplier<Optional<Unsaved>> work;
    private final Consumer<DesignFault> trouble;
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(RecoveryKeeper::thread);
    private Optional<Unsaved> kept = Optional.empty();
    private boolean troubled;

    /**
     * A keeper that does nothing until it is started.
     *
     * @param slot where work is kept
     * @param work the unsaved work of the moment, asked from the keeper's thread; empty if everything is saved
     * @param trouble is told once if work cannot be kept
     */
    public RecoveryKeeper(RecoveryFolder.Slot slot, Supplier<Optional<Unsaved>> work, Consumer<DesignFault> trouble) {
        this.slot = slot;
        this.work = work;
        this.trouble = trouble;
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "recovery");
        thread.setDaemon(true);
        return thread;
    }

    /** Starts keeping, every {@link #PERIOD}. */
    public void start() {
        start(PERIOD);
    }

    /**
     * Starts keeping.
     *
     * @param period time between two keepings, positive
     */
    public void start(Duration period) {
        var unused =
                clock.scheduleWithFixedDelay(this::keep, period.toMillis(), period.toMillis(), TimeUnit.MILLISECONDS);
    }

    /** Keeps the work of the moment now. */
    public synchronized void keep() {
        Optional<Unsaved> now = work.get();
        if (now.equals(kept)) {
            return;
        }
        Optional<DesignFault> fault = now.flatMap(slot::keep);
        if (now.isEmpty()) {
            slot.clear();
        }
        kept = fault.isPresent() ? Optional.empty() : now;
        fault.filter(first -> !troubled).ifPresent(trouble);
        troubled = fault.isPresent();
    }

    /** Stops keeping and leaves the work of the moment to be taken up later. */
    public void leave() {
        clock.shutdownNow();
        keep();
        slot.leave();
    }

    /** Stops keeping and forgets what was kept: the program ends in order. */
    @Override
    public void close() {
        clock.shutdownNow();
        synchronized (this) {
            slot.close();
        }
    }
}
