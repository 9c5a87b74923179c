// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The list of an export's files with their hashes, {@code files.sha256}: one line for each file, hash, two spaces, name,
 * as {@code sha256sum --check} (GNU coreutils) reads it. Before them stand the exporters' settings, each in a comment, a line
 * that begins with a number sign, which that program passes over.
 */
final class FileList {
    private FileList() {}

    static void write(Path folder, List<WrittenFile> files, List<String> settings) throws IOException {
        String lines = Stream.concat(
                        settings.stream().map(setting -> "# " + setting + "\n"),
                        files.stream().map(FileList::line))
                .collect(Collectors.joining());
        Files.writeString(folder.resolve(FileNames.LIST), lines);
    }

    private static String line(WrittenFile file) {
        return line(file.sha256(), file.name()) + "\n";
    }

    /** The line of a file, without its end. */
    static String line(String hash, String name) {
        return hash + "  " + name;
    }

    /**
     * The first file in a folder that is not on its list with the hash it has.
     *
     * @param folder of an earlier export
     */
    static Optional<Path> firstForeign(Path folder) throws IOException {
        Path list = folder.resolve(FileNames.LIST);
        Set<String> lines = Files.isRegularFile(list) ? Set.copyOf(Files.readAllLines(list)) : Set.of();
        try (Stream<Path> entries = Files.walk(folder)) {
            return entries.sorted()
                    .filter(entry -> !Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS) && !entry.equals(list))
                    .filter(entry -> !lines.contains(line(hash(entry), name(folder, entry))))
                    .findFirst();
        } catch (UncheckedIOException broken) {
            throw broken.getCause();
        }
    }

    /** The first entry of a staged folder that was not made through it. */
    static Optional<Path> firstUnknown(Path folder, Set<String> names) throws IOException {
        try (Stream<Path> entries = Files.walk(folder)) {
            return entries.sorted()
                    .filter(entry -> !entry.equals(folder))
                    .filter(entry -> Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)
                            ? names.stream().noneMatch(name -> name.startsWith(name(folder, entry) + "/"))
                            : !names.contains(name(folder, entry)))
                    .findFirst();
        } catch (UncheckedIOException broken) {
            throw broken.getCause();
        }
    }

    private static String name(Path folder, Path entry) {
        return folder.relativize(entry).toString().replace('\\', '/');
    }

    private static String hash(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return hash(in);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The hash of what a stream still holds. */
    static String hash(InputStream in) throws IOException {
        MessageDigest digest = StagedFile.sha256();
        byte[] buffer = new byte[1 << 16];
        for (int length = in.read(buffer); length >= 0; length = in.read(buffer)) {
            digest.update(buffer, 0, length);
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}
