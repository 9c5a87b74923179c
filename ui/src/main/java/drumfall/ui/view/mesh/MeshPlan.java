// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.mesh;

import java.awt.Dimension;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;

/**
 * Where the gears stand: the wheel to the left, the line of centres level, the pitch point in the middle.
 *
 * @param scale pixels for a module
 * @param centre centre of the wheel, px
 * @param wheelRadius pitch radius of the wheel, modules
 * @param pinionRadius pitch radius of the pinion, modules
 * @param centreDistance real distance of the centres, modules
 * @param clockwise whether the wheel turns clockwise
 */
record MeshPlan(
        double scale,
        Point2D centre,
        double wheelRadius,
        double pinionRadius,
        double centreDistance,
        boolean clockwise) {
    /** What is seen at the usual size, modules: some teeth of the wheel and most of a pinion of few leaves. */
    private static final double ACROSS = 13;

    private static final double UPRIGHT = 10;

    /**
     * Gears in a room.
     *
     * @param size the room, px
     * @param zoom 1 shows the usual part
     */
    MeshPlan fitted(Dimension size, double zoom) {
        double fitting = zoom * Math.min(size.width / ACROSS, size.height / UPRIGHT);
        Point2D middle = new Point2D.Double(size.width / 2.0 - wheelRadius * fitting, size.height / 2.0);
        return new MeshPlan(fitting, middle, wheelRadius, pinionRadius, centreDistance, clockwise);
    }

    /** From modules, the wheel's centre the origin and its teeth moving up the y axis, to pixels. */
    AffineTransform toSheet() {
        return new AffineTransform(scale, 0, 0, upright() * scale, centre.getX(), centre.getY());
    }

    private int upright() {
        return clockwise ? 1 : -1;
    }

    Point2D onSheet(double x, double y) {
        return toSheet().transform(new Point2D.Double(x, y), null);
    }

    /** A place some pixels away from a point in a direction of the mesh. */
    Point2D away(Point2D from, double x, double y, double pixels) {
        return new Point2D.Double(from.getX() + pixels * x, from.getY() + upright() * pixels * y);
    }

    /**
     * The wheel's turn when its teeth, or the pinion's, are dragged, rad; positive the way it drives.
     *
     * @param from where the drag begins, px
     * @param to where it ends, px
     */
    double dragged(Point2D from, Point2D to) {
        boolean onPinion = from.getX() > centre.getX() + wheelRadius * scale;
        Point2D about = onPinion ? onSheet(centreDistance, 0) : centre;
        double turn = Math.IEEEremainder(angle(about, to) - angle(about, from), 2 * Math.PI);
        // Angles on the sheet grow clockwise; the pinion turns against the wheel.
        double wheel = onPinion ? -turn * pinionRadius / wheelRadius : turn;
        return upright() * wheel;
    }

    private static double angle(Point2D about, Point2D point) {
        return Math.atan2(point.getY() - about.getY(), point.getX() - about.getX());
    }
}
