// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.sheet.SheetWriter;

/** Figures a maker may want small. */
public enum ObjectiveFigure {
    /** Least running weight with its reserve. */
    RECOMMENDED_WEIGHT(Dimension.MASS),
    /** Material in wheels, pinions, drum and escape wheel. */
    FILAMENT_MASS(Dimension.MASS),
    /** Tip diameter of the largest wheel. */
    LARGEST_WHEEL(Dimension.LENGTH),
    /** Sum of all centre distances. */
    CENTRE_DISTANCES(Dimension.LENGTH),
    /** Number of meshes. */
    MESHES(Dimension.NUMBER),
    /** Number of different modules. */
    MODULES(Dimension.NUMBER),
    /** Difference between the duration and the one wanted. */
    DURATION_ERROR(Dimension.TIME);

    private final Dimension dimension;

    ObjectiveFigure(Dimension dimension) {
        this.dimension = dimension;
    }

    /** What the figure measures; {@link Dimension#NUMBER} for whole counts, which have no resolution. */
    public Dimension dimension() {
        return dimension;
    }

    /** Whether the figure is a whole count. */
    public boolean counted() {
        return dimension == Dimension.NUMBER;
    }

    /** The figure's name as a brief writes it. */
    public String word() {
        return SheetWriter.word(this);
    }
}
