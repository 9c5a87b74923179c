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
 * A zip file that exports go to: complete in a hidden sibling before it takes the place of an earlier one in one move.
 *
 * @param file the file, absolute
 */
record ZipPlace(Path file) implements ExportPlace {
    @Override
    public HiddenEntries hidden() {
        return new HiddenEntries(file.getParent(), file.getFileName().toString());
    }

    @Override
    public Path place() {
        return file;
    }

    /** There is nothing but half-made entries to leave behind. */
    @Override
    public void recover() throws IOException {
        for (Path left : hidden().leftBehind()) {
            HiddenEntries.delete(left);
        }
    }

    @Override
    public Optional<Path> foreignFile() {
        boolean foreign =
                taken() && !(Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && ZipPacking.isListed(file));
        return foreign ? Optional.of(file) : Optional.empty();
    }

    @Override
    public void publish(Path staged, List<WrittenFile> files) throws IOException {
        Path packed = hidden().fresh(HiddenEntries.EXPORTING);
        try {
            ZipPacking.pack(staged, files, packed);
            HiddenEntries.flushToDisk(packed);
            Files.move(packed, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            HiddenEntries.deleteIfPossible(packed);
        }
    }
}
