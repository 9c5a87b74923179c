// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * The one screen that tests in several processes share: a window on it would take the keyboard from another one, so a test
 * with a window waits until the screen is free.
 */
final class OneScreen implements AutoCloseable {
    private static final Path LOCK = Path.of("target", "screen.lock");

    private final FileChannel channel;

    /** Waits for the screen; the system frees it too if the process ends. */
    OneScreen() {
        try {
            channel = FileChannel.open(LOCK, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            channel.lock();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
