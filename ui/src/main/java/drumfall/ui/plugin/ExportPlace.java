// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The folder of one exporter's exports, {@code target/id}, and how a new export takes the place of an earlier one.
 *
 * <p>The new export is complete in a hidden sibling folder before the earlier one is moved aside, the new one moved in,
 * and the earlier one deleted. A program that ends between the two moves leaves the earlier export under its hidden name;
 * the next export moves it back first. Hidden names carry the number of the process they belong to, so that only those of
 * processes that are gone are tidied up.
 *
 * @param target folder that exports go to
 * @param id the exporter's id
 */
record ExportPlace(Path target, String id) {
    private static final Pattern HIDDEN =
            Pattern.compile("\\.([a-z][a-z0-9-]*)\\.(exporting|earlier)-([0-9]{1,18})-[0-9a-z]+");

    /** Where the files end up. */
    Path place() {
        return target.resolve(id);
    }

    /**
     * Makes the hidden folder to stage in, after putting right what a program that ended too early left.
     *
     * @throws IOException if the target cannot be written to
     */
    Path stage() throws IOException {
        Files.createDirectories(target);
        recover();
        return Files.createDirectory(hidden("exporting"));
    }

    /** The target and its parents as far as they do not exist yet, the deepest first. */
    List<Path> missingFolders() {
        return Stream.iterate(target, Objects::nonNull, Path::getParent)
                .takeWhile(folder -> !Files.exists(folder, LinkOption.NOFOLLOW_LINKS))
                .toList();
    }

    /**
     * Removes what an export leaves besides its result.
     *
     * @param staged the hidden folder, if it is still there
     * @param made folders that were made for the export; they go again if nothing was put in them
     */
    void tidy(Path staged, List<Path> made) {
        deleteIfPossible(staged);
        removeEmpty(made);
    }

    void removeEmpty(List<Path> made) {
        try {
            for (Path folder : made) {
                Files.deleteIfExists(folder);
            }
        } catch (IOException inUse) {
            // A folder that holds the export, or that someone else already uses, stays.
        }
    }

    /** Joined without a formatter, which would write digits as the locale does. */
    private Path hidden(String purpose) {
        String unique = Long.toString(System.nanoTime() & Long.MAX_VALUE, 36);
        return target.resolve(
                "." + id + "." + purpose + "-" + ProcessHandle.current().pid() + "-" + unique);
    }

    /** Moves an earlier export back that was moved aside when the program ended, and deletes half-made ones. */
    void recover() throws IOException {
        List<Path> left;
        try (Stream<Path> entries = Files.list(target)) {
            left = entries.filter(this::isLeftBehind).sorted().toList();
        }
        for (Path folder : left) {
            if (purpose(folder).equals("earlier") && !Files.exists(place(), LinkOption.NOFOLLOW_LINKS)) {
                Files.move(folder, place(), StandardCopyOption.ATOMIC_MOVE);
            } else {
                delete(folder);
            }
        }
    }

    private boolean isLeftBehind(Path entry) {
        Matcher matcher = HIDDEN.matcher(entry.getFileName().toString());
        return matcher.matches()
                && matcher.group(1).equals(id)
                && ProcessHandle.of(Long.parseLong(matcher.group(3))).isEmpty();
    }

    private static String purpose(Path hidden) {
        Matcher matcher = HIDDEN.matcher(hidden.getFileName().toString());
        return matcher.matches() ? matcher.group(2) : "";
    }

    /** Something in the place that no export wrote or that was changed since, which must not be replaced. */
    Optional<Path> foreignFile() throws IOException {
        if (!Files.exists(place(), LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        return Files.isDirectory(place(), LinkOption.NOFOLLOW_LINKS)
                ? FileList.firstForeign(place())
                : Optional.of(place());
    }

    /**
     * Puts a complete export in place of the earlier one.
     *
     * @param staged the hidden folder
     * @param files what is in it
     * @throws IOException if it could not be put in place; the earlier one is then back
     */
    void publish(Path staged, List<WrittenFile> files) throws IOException {
        FileList.write(staged, files);
        for (WrittenFile file : files) {
            flushToDisk(staged.resolve(file.name()));
        }
        flushToDisk(staged.resolve(FileNames.LIST));
        if (!Files.exists(place(), LinkOption.NOFOLLOW_LINKS)) {
            Files.move(staged, place(), StandardCopyOption.ATOMIC_MOVE);
            return;
        }
        Path earlier = hidden("earlier");
        Files.move(place(), earlier, StandardCopyOption.ATOMIC_MOVE);
        try {
            Files.move(staged, place(), StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException broken) {
            Files.move(earlier, place(), StandardCopyOption.ATOMIC_MOVE);
            throw broken;
        }
        deleteIfPossible(earlier);
    }

    private static void flushToDisk(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Deletes a hidden folder; what cannot be deleted now is tidied up by a later export. */
    private static void deleteIfPossible(Path hidden) {
        try {
            delete(hidden);
        } catch (IOException later) {
            // Its name says whose it is; an export after this program has ended removes it.
        }
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        List<Path> deepestFirst;
        try (Stream<Path> entries = Files.walk(folder)) {
            deepestFirst = entries.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path entry : deepestFirst) {
            Files.deleteIfExists(entry);
        }
    }
}
