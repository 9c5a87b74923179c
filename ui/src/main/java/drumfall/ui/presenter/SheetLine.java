// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.sheet.SheetField;
import java.util.List;

/**
 * One entry of the brief's sheet.
 *
 * @param pointer JSON pointer of what is entered; for a list, of the whole list
 * @param kind how it is entered
 * @param field bounds and choices
 */
public record SheetLine(String pointer, Kind kind, SheetField field) {
    /** How something is entered. */
    public enum Kind {
        /** A number with its unit, or free text. */
        TEXT,
        /** A whole number. */
        COUNT,
        /** Yes or no. */
        FLAG,
        /** One of several words. */
        CHOICE,
        /** Several values with commas between them. */
        LIST
    }

    static SheetLine of(SheetField field) {
        boolean list = field.pointer().endsWith("/*");
        String pointer = list ? field.pointer().substring(0, field.pointer().length() - 2) : field.pointer();
        return new SheetLine(pointer, list ? Kind.LIST : kind(field), field);
    }

    private static Kind kind(SheetField field) {
        return switch (field.kind()) {
            case QUANTITY, TEXT -> Kind.TEXT;
            case COUNT -> Kind.COUNT;
            case FLAG -> Kind.FLAG;
            case CHOICE -> Kind.CHOICE;
        };
    }

    /** The entry's own name, the last part of its pointer. */
    public String name() {
        return pointer.substring(pointer.lastIndexOf('/') + 1);
    }

    /** Whether the entry, or a group around it, may be left out. */
    public boolean mayBeLeftOut() {
        return field.optionalAt().isPresent();
    }

    /** The words to choose from. */
    public List<String> choices() {
        return field.choices();
    }

    /** The bounds in words; empty if there are none. */
    public String bounds() {
        if (field.low().isPresent() && field.high().isPresent()) {
            return Texts.of("bounds.count", field.low().get(), field.high().get());
        }
        return field.measures().isEmpty() ? "" : field.measures().get(0).words();
    }
}
