// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.geom.Point2D;

/**
 * How the maker looks at a drawing: how much larger than fitted, and how far moved.
 *
 * @param zoom 1 fits the drawing into its room; from 0.25 to 40
 * @param right moved to the right, px
 * @param down moved down, px
 */
public record DrawingView(double zoom, double right, double down) {
    /** The whole drawing in the middle of its room. */
    public static final DrawingView FITTED = new DrawingView(1, 0, 0);

    private static final double LEAST = 0.25;
    private static final double MOST = 40;

    /**
     * Looks closer, keeping a point where it is.
     *
     * @param factor more than 1 looks closer
     * @param point the point, px from the middle of the room
     */
    public DrawingView zoomed(double factor, Point2D point) {
        double wanted = Math.max(LEAST, Math.min(MOST, zoom * factor));
        double grown = wanted / zoom;
        return new DrawingView(
                wanted, point.getX() + (right - point.getX()) * grown, point.getY() + (down - point.getY()) * grown);
    }

    /**
     * Moves the drawing.
     *
     * @param byX to the right, px
     * @param byY down, px
     */
    public DrawingView moved(double byX, double byY) {
        return new DrawingView(zoom, right + byX, down + byY);
    }
}
