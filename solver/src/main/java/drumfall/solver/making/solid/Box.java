// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.solid;

import drumfall.solver.teeth.outline.ArcSegment;
import drumfall.solver.teeth.outline.OutlineSegment;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;

/**
 * An upright rectangle in the plane, mm.
 *
 * @param left least x
 * @param bottom least y
 * @param right greatest x
 * @param top greatest y
 */
public record Box(double left, double bottom, double right, double top) {
    /** The smallest box around a ring, exact for arcs. */
    public static Box around(Ring ring) {
        return ring.segments().stream().map(Box::around).reduce(Box::with).orElseThrow();
    }

    private static Box around(OutlineSegment segment) {
        Box ends = around(segment.start()).with(around(segment.end()));
        return segment instanceof ArcSegment arc ? ends.with(bulge(arc)) : ends;
    }

    private static Box around(Point point) {
        return new Box(point.x(), point.y(), point.x(), point.y());
    }

    /** The box of those of the circle's four outermost points that lie on the arc. */
    private static Box bulge(ArcSegment arc) {
        double from = Math.atan2(
                arc.start().y() - arc.centre().y(),
                arc.start().x() - arc.centre().x());
        Box box = around(arc.end());
        for (int quarter = 0; quarter < 4; quarter++) {
            double turn = quarter * Math.PI / 2 - from;
            double along = arc.sweep() > 0 ? turn : -turn;
            double past = along - 2 * Math.PI * Math.floor(along / (2 * Math.PI));
            if (past < Math.abs(arc.sweep())) {
                Point out = Point.polar(arc.radius(), quarter * Math.PI / 2);
                box = box.with(around(
                        new Point(arc.centre().x() + out.x(), arc.centre().y() + out.y())));
            }
        }
        return box;
    }

    /** The smallest box around this one and another. */
    public Box with(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(bottom, other.bottom),
                Math.max(right, other.right),
                Math.max(top, other.top));
    }

    /** Its width, mm. */
    public double width() {
        return right - left;
    }

    /** Its depth, mm. */
    public double depth() {
        return top - bottom;
    }

    /** Whether it lies on a rectangle of two sides in mm, upright or turned by a right angle. */
    public boolean fits(double one, double other) {
        return Math.min(width(), depth()) <= Math.min(one, other) && Math.max(width(), depth()) <= Math.max(one, other);
    }
}
