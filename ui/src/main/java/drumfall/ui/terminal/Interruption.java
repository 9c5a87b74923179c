// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Lets a user's interrupt end a command early instead of cutting it off.
 *
 * <p>The virtual machine answers an interrupt by running its shutdown hooks; the hook here asks the command to end, waits
 * for its last words and ends the process with the command's own exit code.
 */
final class Interruption implements AutoCloseable {
    /** Long enough for a command to print what is known; a search ends within a tenth of a second. */
    private static final int SECONDS_TO_END = 5;

    private final CountDownLatch closed = new CountDownLatch(1);
    private final Thread hook = new Thread(this::onShutdown, "interruption");
    private volatile boolean asked;
    private volatile int code = ExitCode.STOPPED.number();

    private Interruption() {}

    static Interruption watched() {
        Interruption interruption = new Interruption();
        Runtime.getRuntime().addShutdownHook(interruption.hook);
        return interruption;
    }

    boolean asked() {
        return asked;
    }

    void ended(int exitCode) {
        code = exitCode;
    }

    private void onShutdown() {
        asked = true;
        try {
            if (closed.await(SECONDS_TO_END, TimeUnit.SECONDS)) {
                Runtime.getRuntime().halt(code);
            }
        } catch (InterruptedException enough) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        closed.countDown();
        if (!asked) {
            unwatch();
        }
    }

    private void unwatch() {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException alreadyEnding) {
            // The process is ending by itself; the hook then ends it with the command's code.
            asked = true;
        }
    }
}
