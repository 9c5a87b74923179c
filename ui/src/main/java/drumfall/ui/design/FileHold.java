// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** Holds a file so that a second program does not save over it; let go when closed or when the program ends in any way. */
public final class FileHold implements AutoCloseable {
    /** Held by this program: opening such a file once more and closing it would end the lock (POSIX file locks). */
    private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

    private final Optional<Path> beside;
    private final Optional<FileChannel> channel;

    private FileHold(Optional<Path> beside, Optional<FileChannel> channel) {
        this.beside = beside;
        this.channel = channel;
    }

    /** Holds nothing. */
    public static FileHold none() {
        return new FileHold(Optional.empty(), Optional.empty());
    }

    /**
     * Holds a file. Where nothing can be written beside it, nobody can save over it either, and nothing is held.
     *
     * @param file the file, which need not exist yet
     * @return the hold; empty if another program holds it
     */
    public static Optional<FileHold> on(Path file) {
        Path absolute = file.toAbsolutePath().normalize();
        return locked(absolute.resolveSibling("." + absolute.getFileName() + ".open"));
    }

    /** Locks a file made for the purpose; empty if another program or window has it locked. */
    static Optional<FileHold> locked(Path lockFile) {
        if (!HELD_HERE.add(lockFile)) {
            return Optional.empty();
        }
        FileChannel channel;
        try {
            channel = FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        } catch (IOException | SecurityException fault) {
            HELD_HERE.remove(lockFile);
            return Optional.of(none());
        }
        if (gained(channel)) {
            return Optional.of(new FileHold(Optional.of(lockFile), Optional.of(channel)));
        }
        shut(channel);
        HELD_HERE.remove(lockFile);
        return Optional.empty();
    }

    private static boolean gained(FileChannel channel) {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException held) {
            return false;
        } catch (IOException unsupported) {
            // A file system without locks cannot tell; saving stays possible there.
            return true;
        }
    }

    private static void shut(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException kept) {
            System.getLogger(FileHold.class.getName()).log(System.Logger.Level.DEBUG, "A lock stays open.", kept);
        }
    }

    /** Lets go. */
    @Override
    public void close() {
        beside.ifPresent(FileHold::discard);
        channel.ifPresent(FileHold::shut);
        beside.ifPresent(HELD_HERE::remove);
    }

    private static void discard(Path lockFile) {
        try {
            Files.deleteIfExists(lockFile);
        } catch (IOException | SecurityException kept) {
            System.getLogger(FileHold.class.getName()).log(System.Logger.Level.DEBUG, "A lock file stays.", kept);
        }
    }
}
