// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import com.fasterxml.jackson.databind.JsonNode;
import drumfall.solver.sheet.SheetFormat;
import drumfall.solver.sheet.SheetResult;
import java.nio.file.Path;

/** Reads briefs; whatever is wrong comes back as problems, all that one reading can find, and nothing is thrown. */
public final class BriefReader {
    /** The file format of a brief. */
    public static final SheetFormat<Brief> FORMAT = new SheetFormat<>(Brief.class, "drumfall-brief", 1);

    private BriefReader() {}

    /**
     * The brief that a text stands for.
     *
     * @param text JSON, see the published schema
     */
    public static SheetResult<Brief> read(String text) {
        return FORMAT.read(text).checkedBy(BriefChecks::problems);
    }

    /**
     * The brief that a file holds; a file that cannot be read is a problem too.
     *
     * @param file JSON in UTF-8
     */
    public static SheetResult<Brief> read(Path file) {
        return FORMAT.read(file).checkedBy(BriefChecks::problems);
    }

    /**
     * The brief that a tree stands for, as a window edits it.
     *
     * @param tree JSON with its two opening fields; it is not changed
     */
    public static SheetResult<Brief> read(JsonNode tree) {
        return FORMAT.read(tree).checkedBy(BriefChecks::problems);
    }
}
