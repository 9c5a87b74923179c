// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;

/** Writes records as JSON: fields in the record's order, quantities as typed, absent optional fields left out. */
public final class SheetWriter {
    private SheetWriter() {}

    /**
     * The record as text, two blanks a level, ending in a line feed.
     *
     * @param sheet the record
     * @throws IllegalArgumentException if the record is none that a sheet can hold
     */
    public static String write(Record sheet) {
        return JsonText.of(tree(sheet));
    }

    /**
     * The record as a tree of its own, to be edited and read again.
     *
     * @param sheet the record
     * @throws IllegalArgumentException if the record is none that a sheet can hold
     */
    public static ObjectNode tree(Record sheet) {
        return Shapes.ofRecord(sheet.getClass()).write(sheet);
    }

    /**
     * The word that stands for a constant in a sheet: its name in lower case with hyphens.
     *
     * @param constant one of a choice
     */
    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
