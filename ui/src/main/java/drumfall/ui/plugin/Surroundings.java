// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * What lies around a running export, so that a write past the folder is noticed.
 *
 * <p>Looked at are the entries of the folder that the export goes to, the earlier export itself, and the entries of the
 * working folder, where a relative path ends up. A size, a time of change or an entry that differs afterwards is a trace;
 * whose it is, no one can tell.
 *
 * @param stamps size and time of change of each entry
 */
record Surroundings(Map<Path, String> stamps) {
    /** Larger folders are looked at up to here. */
    private static final int MOST_ENTRIES = 20_000;

    /** Deepest folder of an earlier export: names have at most five parts. */
    private static final int DEPTH = 6;

    /**
     * Looks around now.
     *
     * @param target folder that exports go to
     * @param place folder of the earlier export, inside it
     * @param ours entries that the program itself makes there
     */
    static Surroundings of(Path target, Path place, Predicate<Path> ours) {
        Map<Path, String> stamps = new TreeMap<>();
        look(target, 1, ours, stamps);
        look(place, DEPTH, ours, stamps);
        look(Path.of("").toAbsolutePath(), 1, ours, stamps);
        return new Surroundings(stamps);
    }

    /** The first entry that is new, gone or different now. */
    Optional<Path> firstChange(Surroundings now) {
        Set<Path> all = new HashSet<>(stamps.keySet());
        all.addAll(now.stamps.keySet());
        return all.stream()
                .filter(path -> !stamps.getOrDefault(path, "").equals(now.stamps.getOrDefault(path, "")))
                .sorted()
                .findFirst();
    }

    private static void look(Path folder, int depth, Predicate<Path> ours, Map<Path, String> stamps) {
        try {
            Files.walkFileTree(
                    folder, EnumSet.noneOf(java.nio.file.FileVisitOption.class), depth, new SimpleFileVisitor<>() {
                        @Override
                        public FileVisitResult preVisitDirectory(Path directory, BasicFileAttributes attributes) {
                            return note(directory, "folder");
                        }

                        @Override
                        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                            boolean directory = attributes.isDirectory();
                            return note(
                                    file,
                                    directory ? "folder" : attributes.size() + " " + attributes.lastModifiedTime());
                        }

                        @Override
                        public FileVisitResult visitFileFailed(Path file, IOException failure) {
                            return FileVisitResult.CONTINUE;
                        }

                        private FileVisitResult note(Path path, String stamp) {
                            if (ours.test(path)) {
                                return FileVisitResult.SKIP_SUBTREE;
                            }
                            stamps.put(path, stamp);
                            return stamps.size() < MOST_ENTRIES ? FileVisitResult.CONTINUE : FileVisitResult.TERMINATE;
                        }
                    });
        } catch (IOException notThere) {
            stamps.put(folder, "unreadable");
        }
    }
}
