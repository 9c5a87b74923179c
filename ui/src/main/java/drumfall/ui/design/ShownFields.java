// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import drumfall.solver.brief.Brief;
import drumfall.solver.sheet.SheetField;
import drumfall.solver.sheet.SheetFields;
import java.util.List;

/** Tells which places of a brief the sheet in the window has an entry or a heading for. */
final class ShownFields {
    private static final List<String> PATTERNS =
            SheetFields.of(Brief.class).stream().map(SheetField::pointer).toList();

    private ShownFields() {}

    /** Whether a problem at a place can be shown there and put right by typing. */
    static boolean canShow(String pointer) {
        String pattern = pointer.replaceAll("/\\d+(?=/|$)", "/*");
        return !pattern.isEmpty()
                && PATTERNS.stream().anyMatch(known -> known.equals(pattern) || known.startsWith(pattern + "/"));
    }
}
