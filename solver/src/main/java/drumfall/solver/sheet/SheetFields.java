// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lists the leaf fields of a sheet, so that a window can build its entries from the same description. */
public final class SheetFields {
    private SheetFields() {}

    /**
     * Every leaf field of a sheet, in the sheet's order.
     *
     * @param type the record
     * @throws IllegalArgumentException if the record is none that a sheet can hold
     */
    public static List<SheetField> of(Class<? extends Record> type) {
        List<SheetField> fields = new ArrayList<>();
        Shapes.ofRecord(type).listFields(Place.TOP, Optional.empty(), fields);
        return List.copyOf(fields);
    }
}
