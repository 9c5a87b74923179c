// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.solver.making.solid.Box;
import java.util.ArrayList;
import java.util.List;

/** Places for parts beside each other, in rows from the front of the bed backwards. */
final class BedRows {
    /** Between parts, mm; a skirt's width. */
    private static final double GAP = 5;

    private BedRows() {}

    /**
     * A place.
     *
     * @param x by how far the part is moved to the right, mm
     * @param y by how far it is moved back, mm
     */
    record Place(double x, double y) {}

    /**
     * A place for each box; no two overlap, none reaches below 0.
     *
     * @param boxes what the parts cover
     * @param width of a row, mm; a part that is wider has a row to itself
     */
    static List<Place> of(List<Box> boxes, double width) {
        List<Place> places = new ArrayList<>();
        double x = 0;
        double y = 0;
        double deepest = 0;
        for (Box box : boxes) {
            if (x > 0 && x + box.width() > width) {
                y += deepest + GAP;
                x = 0;
                deepest = 0;
            }
            places.add(new Place(x - box.left(), y - box.bottom()));
            x += box.width() + GAP;
            deepest = Math.max(deepest, box.depth());
        }
        return places;
    }
}
