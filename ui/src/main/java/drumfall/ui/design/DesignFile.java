// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import java.nio.file.Path;
import java.util.Optional;

/** Opens and saves designs; whatever goes wrong is a fault of one sentence, and nothing is thrown. */
public final class DesignFile {
    /** What the names of design files end in. */
    public static final String ENDING = ".drumfall";

    private DesignFile() {}

    /**
     * The design in a file.
     *
     * @param file JSON in UTF-8
     */
    public static DesignReading open(Path file) {
        WholeFile.Read read = WholeFile.read(file);
        return read.text()
                .map(text -> DesignText.read(text, WholeFile.name(file)))
                .orElseGet(() -> new DesignReading.Refused(read.fault().orElseThrow()));
    }

    /**
     * Saves a design; afterwards the file is the new one, or the earlier one untouched.
     *
     * @param file where to
     * @param design the design
     * @return the fault, if it could not be saved
     */
    public static Optional<DesignFault> save(Path file, Design design) {
        return WholeFile.write(file, DesignText.write(design));
    }

    /**
     * The file with the usual ending, added where there is none.
     *
     * @param file as typed
     */
    public static Path withEnding(Path file) {
        String name = WholeFile.name(file);
        return name.endsWith(ENDING) ? file : file.resolveSibling(name + ENDING);
    }
}
