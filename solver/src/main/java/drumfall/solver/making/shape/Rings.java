// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.shape;

import drumfall.solver.teeth.outline.ArcSegment;
import drumfall.solver.teeth.outline.LineSegment;
import drumfall.solver.teeth.outline.OutlineSegment;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Simple rings in millimetres; all run anticlockwise unless they are called holes. */
public final class Rings {
    private static final Point ORIGIN = new Point(0, 0);

    private Rings() {}

    /**
     * A circle about the origin.
     *
     * @param radius mm, more than 0
     */
    public static Ring circle(double radius) {
        return Ring.circle(ORIGIN, radius);
    }

    /**
     * A round hole about the origin.
     *
     * @param radius mm, more than 0
     */
    public static Ring hole(double radius) {
        return hole(ORIGIN, radius);
    }

    /**
     * A round hole.
     *
     * @param centre its centre
     * @param radius mm, more than 0
     */
    public static Ring hole(Point centre, double radius) {
        return Ring.circle(centre, radius).reversed();
    }

    /**
     * A polygon.
     *
     * @param corners in order, anticlockwise for an outer ring; at least three
     */
    public static Ring polygon(List<Point> corners) {
        List<OutlineSegment> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            sides.add(new LineSegment(corners.get(i), corners.get((i + 1) % corners.size())));
        }
        return new Ring(sides);
    }

    /**
     * A rectangle about the origin.
     *
     * @param width along x, mm
     * @param height along y, mm
     */
    public static Ring rectangle(double width, double height) {
        return rectangle(-width / 2, -height / 2, width / 2, height / 2);
    }

    /**
     * A rectangle by its sides, mm.
     *
     * @param left least x
     * @param bottom least y
     * @param right greatest x
     * @param top greatest y
     */
    public static Ring rectangle(double left, double bottom, double right, double top) {
        return polygon(Arrays.asList(
                new Point(left, bottom), new Point(right, bottom), new Point(right, top), new Point(left, top)));
    }

    /**
     * The taut band around two circles.
     *
     * @param one centre of the first
     * @param oneRadius mm, positive
     * @param two centre of the second, neither circle inside the other
     * @param twoRadius mm, positive
     */
    public static Ring band(Point one, double oneRadius, Point two, double twoRadius) {
        double heading = Math.atan2(two.y() - one.y(), two.x() - one.x());
        double lean = Math.acos((oneRadius - twoRadius) / one.distance(two));
        Point a = moved(Point.polar(oneRadius, heading + lean), one);
        Point b = moved(Point.polar(oneRadius, heading - lean), one);
        Point c = moved(Point.polar(twoRadius, heading - lean), two);
        Point d = moved(Point.polar(twoRadius, heading + lean), two);
        return new Ring(List.of(
                new ArcSegment(a, b, one, 2 * Math.PI - 2 * lean),
                new LineSegment(b, c),
                new ArcSegment(c, d, two, 2 * lean),
                new LineSegment(d, a)));
    }

    /**
     * A piece of an annulus about the origin.
     *
     * @param inner inner radius, mm, positive
     * @param outer outer radius, mm, more than {@code inner}
     * @param from angle at which it begins, rad
     * @param to angle at which it ends, rad, more than {@code from}, less than a turn more
     */
    public static Ring sector(double inner, double outer, double from, double to) {
        ArcSegment out = ArcSegment.about(outer, from, to);
        ArcSegment back = ArcSegment.about(inner, to, from);
        return new Ring(List.of(out, joint(out, back), back, joint(back, out)));
    }

    /** The line from the end of one arc to the start of another. */
    private static LineSegment joint(ArcSegment before, ArcSegment after) {
        Point end = after.start();
        return new LineSegment(before.end(), end);
    }

    /**
     * A ring moved.
     *
     * @param ring what to move
     * @param by how far, mm
     */
    public static Ring moved(Ring ring, Point by) {
        return new Ring(
                ring.segments().stream().map(segment -> moved(segment, by)).toList());
    }

    private static OutlineSegment moved(OutlineSegment segment, Point by) {
        Point start = moved(segment.start(), by);
        Point end = moved(segment.end(), by);
        return segment instanceof ArcSegment arc
                ? new ArcSegment(start, end, moved(arc.centre(), by), arc.sweep())
                : new LineSegment(start, end);
    }

    private static Point moved(Point point, Point by) {
        return new Point(point.x() + by.x(), point.y() + by.y());
    }
}
