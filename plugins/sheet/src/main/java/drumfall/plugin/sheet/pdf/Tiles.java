// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.pdf;

import drumfall.solver.making.solid.Box;

/**
 * A drawing cut into windows that overlap, rows counted from the top, columns from the left; millimetres.
 *
 * @param box what is cut
 * @param width of a window
 * @param height of a window
 * @param overlap by which neighbours overlap
 */
record Tiles(Box box, double width, double height, double overlap) {
    /** Room around the drawing. */
    static final double EDGE = 4;

    /** Sums of sizes miss each other in the last digits. */
    private static final double HAIR = 1e-9;

    int columns() {
        return count(box.width() + 2 * EDGE, width);
    }

    int rows() {
        return count(box.depth() + 2 * EDGE, height);
    }

    private int count(double size, double window) {
        return size <= window ? 1 : 1 + (int) Math.ceil((size - window) / (window - overlap) - HAIR);
    }

    /** Left edge of a column's windows; all windows together lie around the drawing's middle. */
    double left(int column) {
        double all = width + (columns() - 1) * (width - overlap);
        return (box.left() + box.right() - all) / 2 + column * (width - overlap);
    }

    /** Lower edge of a row's windows. */
    double bottom(int row) {
        double all = height + (rows() - 1) * (height - overlap);
        return (box.bottom() + box.top() + all) / 2 - height - row * (height - overlap);
    }
}
