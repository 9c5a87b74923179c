// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The hidden files and folders that exports to one name in a folder make on their way.
 *
 * <p>Hidden names carry the number of the process they belong to, so that only those of processes that are gone are tidied
 * up.
 *
 * @param target the folder
 * @param name file name of the export
 */
record HiddenEntries(Path target, String name) {
    /** Half-made. */
    static final String EXPORTING = "exporting";

    /** Moved aside. */
    static final String EARLIER = "earlier";

    private static final Pattern HIDDEN =
            Pattern.compile("\\.(.+)\\.(exporting|earlier)-([0-9]{1,18})-[0-9a-z]+", Pattern.DOTALL);

    /** Joined without a formatter, which would write digits as the locale does. */
    Path fresh(String purpose) {
        String unique = Long.toString(System.nanoTime() & Long.MAX_VALUE, 36);
        return target.resolve(
                "." + name + "." + purpose + "-" + ProcessHandle.current().pid() + "-" + unique);
    }

    /** What programs left that ended too early. */
    List<Path> leftBehind() throws IOException {
        try (Stream<Path> entries = Files.list(target)) {
            return entries.filter(this::isLeftBehind).sorted().toList();
        }
    }

    private boolean isLeftBehind(Path entry) {
        Matcher matcher = HIDDEN.matcher(entry.getFileName().toString());
        return matcher.matches()
                && matcher.group(1).equals(name)
                && ProcessHandle.of(Long.parseLong(matcher.group(3))).isEmpty();
    }

    static boolean isEarlier(Path hidden) {
        Matcher matcher = HIDDEN.matcher(hidden.getFileName().toString());
        return matcher.matches() && matcher.group(2).equals(EARLIER);
    }

    /** The target and its parents as far as they do not exist yet, the deepest first. */
    List<Path> missingFolders() {
        return Stream.iterate(target, Objects::nonNull, Path::getParent)
                .takeWhile(folder -> !Files.exists(folder, LinkOption.NOFOLLOW_LINKS))
                .toList();
    }

    static void removeEmpty(List<Path> made) {
        try {
            for (Path folder : made) {
                Files.deleteIfExists(folder);
            }
        } catch (IOException inUse) {
            // A folder that holds the export, or that someone else already uses, stays.
        }
    }

    static void flushToDisk(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Deletes a hidden entry; what cannot be deleted now is tidied up by a later export. */
    static void deleteIfPossible(Path hidden) {
        try {
            delete(hidden);
        } catch (IOException later) {
            // Its name says whose it is; an export after this program has ended removes it.
        }
    }

    static void delete(Path hidden) throws IOException {
        if (!Files.exists(hidden, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        List<Path> deepestFirst;
        try (Stream<Path> entries = Files.walk(hidden)) {
            deepestFirst = entries.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path entry : deepestFirst) {
            Files.deleteIfExists(entry);
        }
    }
}
