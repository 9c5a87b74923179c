// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Where an export ends up: what is there stays whole until the new one is, and what no export wrote is not replaced. */
sealed interface ExportPlace permits FolderPlace, ZipPlace {
    /** Name of the folder that exports of all exporters go to; no exporter's id has an underscore. */
    String ALL = "all_exports";

    /** Ending of a file that exports of all exporters are packed into. */
    String ZIP = ".zip";

    /**
     * The place of an export of all exporters: the target itself if it is named as a zip file, else a folder in it.
     *
     * @param target absolute
     */
    static ExportPlace ofAll(Path target) {
        Path name = target.getFileName();
        return name != null && name.toString().toLowerCase(Locale.ROOT).endsWith(ZIP)
                ? new ZipPlace(target)
                : new FolderPlace(target, ALL);
    }

    /** The hidden entries that it makes. */
    HiddenEntries hidden();

    /** The folder or file in which the export ends up. */
    Path place();

    /** The folder that the place is in. */
    default Path target() {
        return hidden().target();
    }

    /**
     * Makes the hidden folder to stage in, after putting right what a program that ended too early left.
     *
     * @throws IOException if the target cannot be written to
     */
    default Path stage() throws IOException {
        Files.createDirectories(target());
        recover();
        return Files.createDirectory(hidden().fresh(HiddenEntries.EXPORTING));
    }

    /** Puts right what programs left that ended too early. */
    void recover() throws IOException;

    /**
     * Removes what an export leaves besides its result.
     *
     * @param staged the hidden folder, if it is still there
     * @param made folders that were made for the export; they go again if nothing was put in them
     */
    default void tidy(Path staged, List<Path> made) {
        HiddenEntries.deleteIfPossible(staged);
        HiddenEntries.removeEmpty(made);
    }

    /** Whether something is there. */
    default boolean taken() {
        return Files.exists(place(), LinkOption.NOFOLLOW_LINKS);
    }

    /** Something in the place that no export wrote or that was changed since, which must not be replaced. */
    Optional<Path> foreignFile() throws IOException;

    /**
     * Puts a complete export in place of the earlier one.
     *
     * @param staged the hidden folder, with the list of its files
     * @param files what is in it
     * @throws IOException if it could not be put in place; the earlier one is then back
     */
    void publish(Path staged, List<WrittenFile> files) throws IOException;
}
