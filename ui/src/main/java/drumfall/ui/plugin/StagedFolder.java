// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ExportFolder;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The folder an exporter is given: a temporary one, watched file by file.
 *
 * <p>It keeps the first thing that went wrong even if the exporter hides it, and once closed refuses every further byte,
 * so that a thread left behind cannot touch what is published. All streams write under this folder's lock.
 */
final class StagedFolder implements ExportFolder, Closeable {
    private final Path root;
    private final String plugin;
    private final Opener opener;
    private final Map<String, StagedFile> files = new TreeMap<>();
    private Optional<PluginFault> refusal = Optional.empty();
    private Optional<IOException> failure = Optional.empty();
    private boolean closed;

    /** Opens a new file of the system; tests put a full disk here. */
    @FunctionalInterface
    interface Opener {
        /** Opens it. */
        OutputStream open(Path file) throws IOException;
    }

    StagedFolder(Path root, String plugin, Opener opener) {
        this.root = root;
        this.plugin = plugin;
        this.opener = opener;
    }

    @Override
    public synchronized OutputStream create(String name) throws IOException {
        requireOpen();
        faultOf(name).ifPresent(this::refuse);
        Path file = resolved(name);
        try {
            Files.createDirectories(file.getParent());
            StagedFile staged = new StagedFile(this, name, opener.open(file));
            files.put(FileNames.key(name), staged);
            return staged;
        } catch (IOException broken) {
            throw failed(broken);
        }
    }

    /** A system whose file names have a narrower character set refuses here what the rules allow. */
    private Path resolved(String name) {
        try {
            return root.resolve(name);
        } catch (InvalidPathException unmappable) {
            refuse(badName(name, "name.character"));
            throw unmappable;
        }
    }

    private Optional<PluginFault> faultOf(String name) {
        if (name == null) {
            return Optional.of(badName("", "name.null"));
        }
        if (FileNames.leavesFolder(name)) {
            return Optional.of(PluginFault.of(FaultKind.NAME_LEAVES_FOLDER, plugin, name));
        }
        return FileNames.brokenRule(name)
                .or(() -> isTaken(name) ? Optional.of("name.duplicate") : Optional.empty())
                .map(rule -> badName(name, rule));
    }

    private PluginFault badName(String name, String rule) {
        return PluginFault.of(FaultKind.BAD_FILE_NAME, plugin, name, FaultText.word(rule));
    }

    /** Taken by a file, or by a folder of that name, or a file stands where a folder is wanted. */
    private boolean isTaken(String name) {
        String key = FileNames.key(name);
        return files.keySet().stream()
                .anyMatch(other -> other.equals(key) || other.startsWith(key + "/") || key.startsWith(other + "/"));
    }

    private void refuse(PluginFault fault) {
        refusal = refusal.or(() -> Optional.of(fault));
        throw new IllegalArgumentException(fault.sentence());
    }

    /** Checks that the export has not been given up; called under the lock. */
    void requireOpen() throws IOException {
        if (closed) {
            throw new IOException(FaultText.word("reason.abandoned"));
        }
    }

    /** Remembers the first failure of the file system. */
    IOException failed(IOException broken) {
        failure = failure.or(() -> Optional.of(broken));
        return broken;
    }

    /** The first file name refused, if any. */
    synchronized Optional<PluginFault> refusal() {
        return refusal;
    }

    /** The first failure of the file system, if any. */
    synchronized Optional<IOException> failure() {
        return failure;
    }

    /** The files so far, by name. */
    synchronized Collection<StagedFile> files() {
        return files.values().stream()
                .sorted(java.util.Comparator.comparing(StagedFile::name))
                .toList();
    }

    /** Ends all writing; files not closed by the exporter are closed and stay marked as open. */
    @Override
    public synchronized void close() {
        closed = true;
        for (StagedFile file : files.values()) {
            try {
                file.abandon();
            } catch (IOException broken) {
                failed(broken);
            }
        }
    }
}
