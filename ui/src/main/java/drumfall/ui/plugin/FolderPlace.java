// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;

/**
 * The folder of one exporter's exports, {@code target/id}, and how a new export takes the place of an earlier one.
 *
 * <p>The new export is complete in a hidden sibling folder before the earlier one is moved aside, the new one moved in,
 * and the earlier one deleted. A program that ends between the two moves leaves the earlier export under its hidden name;
 * the next export moves it back first.
 *
 * @param hidden the hidden entries, of the target folder and the exporter's id
 */
record FolderPlace(HiddenEntries hidden) implements ExportPlace {
    /**
     * A folder for exports.
     *
     * @param target folder that exports go to
     * @param id the exporter's id
     */
    FolderPlace(Path target, String id) {
        this(new HiddenEntries(target, id));
    }

    @Override
    public Path place() {
        return target().resolve(hidden.name());
    }

    /** Moves an earlier export back that was moved aside when the program ended, and deletes half-made ones. */
    @Override
    public void recover() throws IOException {
        for (Path left : hidden.leftBehind()) {
            if (HiddenEntries.isEarlier(left) && !taken()) {
                Files.move(left, place(), StandardCopyOption.ATOMIC_MOVE);
            } else {
                HiddenEntries.delete(left);
            }
        }
    }

    @Override
    public Optional<Path> foreignFile() throws IOException {
        if (!taken()) {
            return Optional.empty();
        }
        return Files.isDirectory(place(), LinkOption.NOFOLLOW_LINKS)
                ? FileList.firstForeign(place())
                : Optional.of(place());
    }

    @Override
    public void publish(Path staged, List<WrittenFile> files) throws IOException {
        for (WrittenFile file : files) {
            HiddenEntries.flushToDisk(staged.resolve(file.name()));
        }
        HiddenEntries.flushToDisk(staged.resolve(FileNames.LIST));
        if (!taken()) {
            Files.move(staged, place(), StandardCopyOption.ATOMIC_MOVE);
            return;
        }
        Path earlier = hidden.fresh(HiddenEntries.EARLIER);
        Files.move(place(), earlier, StandardCopyOption.ATOMIC_MOVE);
        try {
            Files.move(staged, place(), StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException broken) {
            Files.move(earlier, place(), StandardCopyOption.ATOMIC_MOVE);
            throw broken;
        }
        HiddenEntries.deleteIfPossible(earlier);
    }
}
