// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.sheet.SheetSchema;

/** The published JSON Schema of a brief. */
public final class BriefSchema {
    private BriefSchema() {}

    /** The schema (draft 2020-12) as text; the file {@code brief.schema.json} beside this class holds the same. */
    public static String text() {
        return SheetSchema.of(BriefReader.FORMAT);
    }
}
