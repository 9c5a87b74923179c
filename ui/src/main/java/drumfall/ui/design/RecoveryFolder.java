// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * The folder in which unsaved work of running programs is kept, one file each; what a program that ended badly left there
 * can be taken up again.
 *
 * @param folder where; made when first needed
 */
public record RecoveryFolder(Path folder) {
    private static final String FORMAT = "drumfall-recovery";
    private static final String LOCK = ".lock";

    /** One running program's place in the folder. */
    public static final class Slot implements AutoCloseable {
        private final Path file;
        private final FileHold hold;

        private Slot(Path file, FileHold hold) {
            this.file = file;
            this.hold = hold;
        }

        /**
         * Keeps work, in place of what was kept before.
         *
         * @param unsaved the work
         * @return the fault, if it could not be kept
         */
        public Optional<DesignFault> keep(Unsaved unsaved) {
            return WholeFile.write(file, text(unsaved));
        }

        /** Forgets what was kept: it is saved now. */
        public void clear() {
            discard(file);
        }

        /** Gives the place back and leaves what was kept, to be taken up later. */
        public void leave() {
            hold.close();
        }

        /** Forgets what was kept and gives the place back. */
        @Override
        public void close() {
            clear();
            hold.close();
        }
    }

    /**
     * Work that a program left behind.
     *
     * @param unsaved the work
     * @param file where it is kept
     */
    public record LeftBehind(Unsaved unsaved, Path file) {}

    /** A new place for this program. */
    public Slot slot() {
        try {
            Files.createDirectories(folder);
        } catch (IOException | SecurityException fault) {
            System.getLogger(RecoveryFolder.class.getName())
                    .log(System.Logger.Level.WARNING, "Unsaved work cannot be kept.", fault);
        }
        Path file = folder.resolve(UUID.randomUUID() + DesignFile.ENDING);
        return new Slot(file, FileHold.locked(lockOf(file)).orElseGet(FileHold::none));
    }

    /** Work left behind by programs that no longer run, the newest first; files that cannot be read are left alone. */
    public List<LeftBehind> leftBehind() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(DesignFile.ENDING))
                    .filter(RecoveryFolder::abandoned)
                    .sorted(Comparator.comparing(RecoveryFolder::changed).reversed())
                    .flatMap(file -> read(file).map(unsaved -> new LeftBehind(unsaved, file)).stream())
                    .toList();
        } catch (IOException | SecurityException fault) {
            return List.of();
        }
    }

    /** Forgets work left behind: it is taken up or no longer wanted. */
    public void discard(LeftBehind work) {
        discard(work.file());
        discard(lockOf(work.file()));
    }

    private static boolean abandoned(Path file) {
        Optional<FileHold> hold = FileHold.locked(lockOf(file));
        hold.ifPresent(FileHold::close);
        return hold.isPresent();
    }

    private static FileTime changed(Path file) {
        try {
            return Files.getLastModifiedTime(file);
        } catch (IOException gone) {
            return FileTime.fromMillis(0);
        }
    }

    private static Path lockOf(Path file) {
        return file.resolveSibling(file.getFileName() + LOCK);
    }

    private static String text(Unsaved unsaved) {
        ObjectNode tree = DesignText.object().put("format", FORMAT).put("version", 1);
        unsaved.origin().ifPresent(origin -> tree.put("origin", origin.toString()));
        tree.set("design", DesignText.tree(unsaved.design()));
        return DesignText.laidOut(tree);
    }

    private static Optional<Unsaved> read(Path file) {
        return WholeFile.read(file).text().flatMap(RecoveryFolder::parsed);
    }

    private static Optional<Unsaved> parsed(String text) {
        try {
            JsonNode tree = DesignText.parsed(text);
            Optional<Path> origin =
                    Optional.ofNullable(tree.path("origin").textValue()).map(Path::of);
            return DesignText.read(tree.path("design"), "").accepted().map(design -> new Unsaved(design, origin));
        } catch (JsonProcessingException | InvalidPathException fault) {
            return Optional.empty();
        }
    }

    private static void discard(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException | SecurityException kept) {
            System.getLogger(RecoveryFolder.class.getName())
                    .log(System.Logger.Level.DEBUG, "A recovery file stays.", kept);
        }
    }
}
