// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.written;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.sheet.SheetFormat;
import drumfall.solver.sheet.SheetResult;
import java.nio.file.Path;

/** Reads and writes layout files; whatever is wrong with one comes back as problems, and nothing is thrown. */
public final class LayoutReader {
    /** The file format of a layout. */
    public static final SheetFormat<LayoutSheet> FORMAT = new SheetFormat<>(LayoutSheet.class, "drumfall-layout", 1);

    private LayoutReader() {}

    /**
     * The sheet that a text stands for, if it has the places and planes that a need asks for.
     *
     * @param text JSON
     * @param need what the layout is to be held against
     */
    public static SheetResult<LayoutSheet> read(String text, LayoutNeed need) {
        return FORMAT.read(text).checkedBy(sheet -> new LayoutSheetRules(sheet, need).problems());
    }

    /**
     * The sheet that a file holds, if it has the places and planes that a need asks for; a file that cannot be read is a
     * problem too.
     *
     * @param file JSON in UTF-8
     * @param need what the layout is to be held against
     */
    public static SheetResult<LayoutSheet> read(Path file, LayoutNeed need) {
        return FORMAT.read(file).checkedBy(sheet -> new LayoutSheetRules(sheet, need).problems());
    }

    /**
     * The text of a layout, ending in a line feed; {@link #read(String, LayoutNeed)} reads an equal layout back.
     *
     * @param name what to call it
     * @param layout the layout
     */
    public static String write(String name, Layout layout) {
        return FORMAT.write(LayoutSheet.of(name, layout));
    }
}
