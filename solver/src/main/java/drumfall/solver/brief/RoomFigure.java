// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.sheet.SheetWriter;

/** What may be measured of the room that a movement takes. */
public enum RoomFigure {
    /** Height of the parts where they stand. */
    MOVEMENT_HEIGHT(Dimension.LENGTH),
    /** Width of the parts where they stand. */
    MOVEMENT_WIDTH(Dimension.LENGTH),
    /** Depth over plates and motion work. */
    MOVEMENT_DEPTH(Dimension.LENGTH),
    /** Area of the smallest upright plate. */
    PLATE_AREA(Dimension.AREA);

    private final Dimension dimension;

    RoomFigure(Dimension dimension) {
        this.dimension = dimension;
    }

    /** What it measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** The figure's name as a brief writes it. */
    public String word() {
        return SheetWriter.word(this);
    }
}
