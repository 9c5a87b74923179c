// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;

/**
 * Outlines of gears as a drawing shows them: teeth simplified to straight flanks, true in number, pitch and height.
 *
 * <p>Exact flanks belong to the sheets that are printed from; here a tooth is a few pixels.
 */
final class GearShape {
    /** Clearance below the pitch circle in modules, common practice, no source. */
    private static final double DEDENDUM = 1.25;

    /** Share of the pitch that a tooth takes at root, and at tip. */
    private static final double ROOT_SHARE = 0.62;

    private static final double TIP_SHARE = 0.28;

    private GearShape() {}

    /**
     * A toothed outline.
     *
     * @param x centre
     * @param y centre
     * @param count teeth
     * @param pitch pitch radius
     * @param tip tip radius
     * @param turn angle of the first tooth, rad
     */
    static Path2D toothed(double x, double y, int count, double pitch, double tip, double turn) {
        double root = Math.max(0.4 * pitch, pitch - DEDENDUM * 2 * pitch / count);
        double step = 2 * Math.PI / count;
        Path2D path = new Path2D.Double();
        for (int i = 0; i < count; i++) {
            double middle = turn + i * step;
            add(path, x, y, root, middle - ROOT_SHARE / 2 * step);
            add(path, x, y, tip, middle - TIP_SHARE / 2 * step);
            add(path, x, y, tip, middle + TIP_SHARE / 2 * step);
            add(path, x, y, root, middle + ROOT_SHARE / 2 * step);
        }
        path.closePath();
        return path;
    }

    /**
     * The outline of an escape wheel: pointed teeth that lean forward.
     *
     * @param x centre
     * @param y centre
     * @param count teeth
     * @param tip radius of the tips
     * @param clockwise which way the wheel turns
     */
    static Path2D escape(double x, double y, int count, double tip, boolean clockwise) {
        double root = 0.8 * tip;
        double step = 2 * Math.PI / count;
        double lean = clockwise ? 0.38 : -0.38;
        Path2D path = new Path2D.Double();
        for (int i = 0; i < count; i++) {
            double middle = -Math.PI / 2 + i * step;
            add(path, x, y, root, middle - 0.42 * step);
            add(path, x, y, tip, middle + (lean - 0.05) * step);
            add(path, x, y, tip, middle + (lean + 0.05) * step);
            add(path, x, y, root, middle + 0.42 * step);
        }
        path.closePath();
        return path;
    }

    private static void add(Path2D path, double x, double y, double radius, double angle) {
        double px = x + radius * Math.cos(angle);
        double py = y + radius * Math.sin(angle);
        if (path.getCurrentPoint() == null) {
            path.moveTo(px, py);
        } else {
            path.lineTo(px, py);
        }
    }

    static Shape circle(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }
}
