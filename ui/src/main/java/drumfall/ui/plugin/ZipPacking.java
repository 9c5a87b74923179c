// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Packs an export so that the same files give the same bytes: sorted names, one fixed time. */
final class ZipPacking {
    /** The first moment that a zip file can name (PKWARE, <i>APPNOTE.TXT</i>, 4.4.6, from memory). */
    private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private ZipPacking() {}

    /**
     * Packs the files of a staged folder and their list.
     *
     * @param staged the folder
     * @param files what is in it
     * @param packed the file to make
     */
    static void pack(Path staged, List<WrittenFile> files, Path packed) throws IOException {
        List<String> names = Stream.concat(files.stream().map(WrittenFile::name), Stream.of(FileNames.LIST))
                .sorted()
                .toList();
        try (OutputStream out = Files.newOutputStream(packed, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(out), StandardCharsets.UTF_8)) {
            for (String name : names) {
                ZipEntry entry = new ZipEntry(name);
                entry.setTimeLocal(TIME);
                zip.putNextEntry(entry);
                Files.copy(staged.resolve(name), zip);
                zip.closeEntry();
            }
        }
    }

    /** Whether a file is a zip file of which every entry is on its list with the hash it has. */
    static boolean isListed(Path file) {
        try (ZipFile zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8)) {
            ZipEntry list = zip.getEntry(FileNames.LIST);
            if (list == null) {
                return false;
            }
            Set<String> lines = lines(zip, list);
            for (ZipEntry entry : zip.stream().toList()) {
                if (!entry.getName().equals(FileNames.LIST) && !lines.contains(line(zip, entry))) {
                    return false;
                }
            }
            return true;
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static Set<String> lines(ZipFile zip, ZipEntry list) throws IOException {
        try (InputStream in = zip.getInputStream(list)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().collect(Collectors.toSet());
        }
    }

    private static String line(ZipFile zip, ZipEntry entry) throws IOException {
        try (InputStream in = zip.getInputStream(entry)) {
            return FileList.line(FileList.hash(in), entry.getName());
        }
    }
}
