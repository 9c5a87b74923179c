// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;

/**
 * Runs a plugin's code on a thread of its own, so that whatever it throws, and however long it takes, stays there.
 *
 * <p>A thread that is out of time is interrupted and left behind: Java offers no safe way to end it. It is a daemon and
 * does not keep the program from ending.
 */
final class GuardedCall {
    private static final long POLL_MILLIS = 20;

    /** An honest exporter ends soon after it is interrupted; only a thread that does not counts as still running. */
    private static final long GRACE_MILLIS = 500;

    private final String name;
    private final ClassLoader context;

    /**
     * Calls into one plugin.
     *
     * @param name of the thread
     * @param context the plugin's class loader
     */
    GuardedCall(String name, ClassLoader context) {
        this.name = name;
        this.context = context;
    }

    /** How a call ended. */
    sealed interface Ending<T> {
        /** It returned. */
        record Returned<T>(T value) implements Ending<T> {}

        /** It threw. */
        record Threw<T>(ThrownText thrown) implements Ending<T> {}

        /**
         * It took too long.
         *
         * @param thread its thread, which may still run
         */
        record OutOfTime<T>(Thread thread) implements Ending<T> {}

        /**
         * It was no longer wanted.
         *
         * @param thread its thread, which may still run
         */
        record Cancelled<T>(Thread thread) implements Ending<T> {}
    }

    /**
     * Runs a call and waits for its end.
     *
     * @param limit how long at most
     * @param cancelled asked every few milliseconds
     * @param call the plugin's code
     */
    <T> Ending<T> run(Duration limit, BooleanSupplier cancelled, Callable<T> call) {
        CompletableFuture<Ending<T>> ending = new CompletableFuture<>();
        Thread thread = new Thread(() -> complete(ending, call), name);
        thread.setDaemon(true);
        thread.setContextClassLoader(context);
        thread.start();
        Ending<T> seen = await(ending, limit, cancelled, thread);
        if (!(seen instanceof Ending.Returned || seen instanceof Ending.Threw)) {
            interrupt(thread);
        }
        return seen;
    }

    private static void interrupt(Thread thread) {
        thread.interrupt();
        try {
            thread.join(GRACE_MILLIS);
        } catch (InterruptedException unwanted) {
            Thread.currentThread().interrupt();
        }
    }

    private static <T> void complete(CompletableFuture<Ending<T>> ending, Callable<T> call) {
        try {
            ending.complete(new Ending.Returned<>(call.call()));
        } catch (Throwable thrown) {
            ending.complete(new Ending.Threw<>(ThrownText.of(thrown)));
        } finally {
            ending.complete(new Ending.Threw<>(ThrownText.UNKNOWN));
        }
    }

    private static <T> Ending<T> await(
            CompletableFuture<Ending<T>> ending, Duration limit, BooleanSupplier cancelled, Thread thread) {
        long start = System.nanoTime();
        while (System.nanoTime() - start < limit.toNanos()) {
            try {
                return ending.get(POLL_MILLIS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException notYet) {
                if (cancelled.getAsBoolean()) {
                    return new Ending.Cancelled<>(thread);
                }
            } catch (InterruptedException unwanted) {
                Thread.currentThread().interrupt();
                return new Ending.Cancelled<>(thread);
            } catch (ExecutionException never) {
                throw new IllegalStateException("A guarded call must end with an ending.", never);
            }
        }
        return new Ending.OutOfTime<>(thread);
    }
}
