// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import drumfall.solver.layout.Place;
import drumfall.ui.view.train.DrawingView;
import java.awt.Dimension;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * Puts millimetres on a sheet, upwards as in the drawing.
 *
 * @param scale px a millimetre
 * @param originX where x = 0 is, px from the left
 * @param originY where y = 0 is, px from the top
 */
record SheetScale(double scale, double originX, double originY) {
    private static final double NANOMETRES_A_MILLIMETRE = 1e6;

    /**
     * Fits a part of the drawing into the room that margins leave, then looks closer as the maker does.
     *
     * @param bounds what is to be seen, mm, its y the lowest
     * @param room px
     * @param margin on each side, px
     * @param view how the maker looks
     */
    static SheetScale fitted(Rectangle2D bounds, Dimension room, double margin, DrawingView view) {
        double across = Math.max(1, room.width - 2 * margin) / bounds.getWidth();
        double up = Math.max(1, room.height - 2 * margin) / bounds.getHeight();
        double scale = Math.min(across, up) * view.zoom();
        return new SheetScale(
                scale,
                room.width / 2.0 + view.right() - bounds.getCenterX() * scale,
                room.height / 2.0 + view.down() + bounds.getCenterY() * scale);
    }

    double x(double millimetres) {
        return originX + millimetres * scale;
    }

    double y(double millimetres) {
        return originY - millimetres * scale;
    }

    /** The place under a point of the sheet. */
    Place placeAt(Point2D point) {
        return new Place(
                Math.round((point.getX() - originX) / scale * NANOMETRES_A_MILLIMETRE),
                Math.round((originY - point.getY()) / scale * NANOMETRES_A_MILLIMETRE));
    }
}
