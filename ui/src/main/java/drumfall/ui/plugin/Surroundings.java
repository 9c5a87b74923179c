// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What lies around a running export, so that a write past the folder is noticed.
 *
 * <p>Looked at are the earlier export and the entries of the folder it lies in, by size and time of change, and the entries
 * of the working folder, where a relative path ends up, by name alone. Hidden entries are passed over: desktops write
 * them all the time, into the home folder above all. Whose a change is, no one can tell.
 *
 * @param stamps what is remembered of each entry
 */
record Surroundings(Map<Path, String> stamps) {
    /** Larger folders are looked at up to here. */
    private static final int MOST_ENTRIES = 20_000;

    /** Deepest folder of an earlier export: names have at most five parts, in a folder for each exporter. */
    private static final int DEPTH = 7;

    /**
     * Looks around now.
     *
     * @param target folder that exports go to
     * @param watched folder of the earlier export, inside it, and folders of exporters that came before
     */
    static Surroundings of(Path target, List<Path> watched) {
        Map<Path, String> stamps = new TreeMap<>();
        look(Path.of("").toAbsolutePath(), new Look(1, attributes -> "there", stamps));
        look(target, new Look(1, Surroundings::stamp, stamps));
        watched.forEach(folder -> look(folder, new Look(DEPTH, Surroundings::stamp, stamps)));
        return new Surroundings(stamps);
    }

    /** The first entry that is new, gone or different now. */
    Optional<Path> firstChange(Surroundings now) {
        TreeSet<Path> all = new TreeSet<>(stamps.keySet());
        all.addAll(now.stamps.keySet());
        return all.stream()
                .filter(path -> !stamps.getOrDefault(path, "").equals(now.stamps.getOrDefault(path, "")))
                .findFirst();
    }

    private static String stamp(BasicFileAttributes attributes) {
        return attributes.isDirectory() ? "folder" : attributes.size() + " " + attributes.lastModifiedTime();
    }

    private static void look(Path folder, Look look) {
        try {
            Files.walkFileTree(folder, EnumSet.noneOf(FileVisitOption.class), look.depth, look);
        } catch (IOException unreadable) {
            look.stamps.put(folder, "unreadable");
        }
    }

    /** Remembers what it passes. */
    private static final class Look extends SimpleFileVisitor<Path> {
        private final int depth;
        private final Function<BasicFileAttributes, String> stamp;
        private final Map<Path, String> stamps;
        private boolean inside;

        Look(int depth, Function<BasicFileAttributes, String> stamp, Map<Path, String> stamps) {
            this.depth = depth;
            this.stamp = stamp;
            this.stamps = stamps;
        }

        /** The folder looked at is not remembered itself, only what is in it. */
        @Override
        public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
            FileVisitResult result = inside ? note(folder, attributes) : FileVisitResult.CONTINUE;
            inside = true;
            return result;
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            return note(file, attributes);
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException failure) {
            return FileVisitResult.CONTINUE;
        }

        private FileVisitResult note(Path path, BasicFileAttributes attributes) {
            if (path.getFileName().toString().startsWith(".")) {
                return FileVisitResult.SKIP_SUBTREE;
            }
            stamps.put(path, stamp.apply(attributes));
            return stamps.size() < MOST_ENTRIES ? FileVisitResult.CONTINUE : FileVisitResult.TERMINATE;
        }
    }
}
