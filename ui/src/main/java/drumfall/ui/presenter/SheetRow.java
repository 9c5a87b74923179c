// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import java.util.List;

/**
 * One row of the brief's sheet: a label and the entries that belong together, such as both ends of a range.
 *
 * @param pointer JSON pointer of the entry, or of the group around the entries
 * @param lines the entries, at least one
 */
public record SheetRow(String pointer, List<SheetLine> lines) {
    /** Copies the list. */
    public SheetRow {
        lines = List.copyOf(lines);
    }

    /** What the row is called. */
    public String label() {
        return Texts.of(key(pointer));
    }

    /** What one entry of the row is called when it is spoken of alone. */
    public String label(SheetLine line) {
        return lines.size() == 1 ? label() : Texts.of("entry.named", label(), entry(line));
    }

    /** What one entry of a row of several is called within it. */
    public String entry(SheetLine line) {
        return Texts.of("entry." + line.name());
    }

    /** What is worth knowing about an entry: its own remark, or its bounds; empty if there is neither. */
    public String tip(SheetLine line) {
        String key = "tip." + line.pointer().substring(1).replace('/', '.');
        return Texts.has(key) ? Texts.of(key) : line.bounds();
    }

    /** Whether there is a word to choose that may be left out: its entries are not told by what stands in them. */
    public boolean mayBeSwitchedOff() {
        return lines.stream().anyMatch(line -> line.kind() == SheetLine.Kind.CHOICE && line.mayBeLeftOut());
    }

    static String key(String pointer) {
        return "field" + pointer.replace('/', '.');
    }
}
