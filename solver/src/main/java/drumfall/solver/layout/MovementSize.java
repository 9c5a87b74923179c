// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

/**
 * The room that a movement takes as one layout has it; another layout of the same train may take less.
 *
 * @param parts the smallest upright box around every tip circle, hub and rod, the drum with its line, the pallets and the
 *     motion work; pillars and weight are left out, as these stand where the frame puts them, whatever the train
 * @param plate the smallest upright box around the same and the pillars: what the smallest upright plate covers
 * @param depth over both plates and the motion work, nm
 */
public record MovementSize(Box parts, Box plate, long depth) {
    /**
     * The size of a layout.
     *
     * @param layout where everything stands
     */
    public static MovementSize of(Layout layout) {
        Box parts = layout.extent();
        long radius = layout.need().envelope().pillars().isPresent()
                ? layout.need().envelope().pillars().get().radius()
                : 0;
        Box plate = layout.pillarPlaces().stream()
                .map(axis -> Box.around(axis, radius))
                .reduce(parts, Box::around);
        return new MovementSize(parts, plate, layout.depth());
    }

    /** The width of the parts, nm. */
    public long width() {
        return parts.width();
    }

    /** The height of the parts, nm. */
    public long height() {
        return parts.height();
    }

    /** The area of the smallest upright plate, m&sup2;. */
    public double plateArea() {
        return plate.area();
    }
}
