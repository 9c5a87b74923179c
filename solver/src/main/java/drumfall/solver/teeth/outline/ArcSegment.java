// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import java.util.ArrayList;
import java.util.List;

/**
 * A circular piece of a ring.
 *
 * @param start where it starts
 * @param end where it ends
 * @param centre centre of its circle
 * @param sweep turn about the centre from start to end, rad, positive anticlockwise
 */
public record ArcSegment(Point start, Point end, Point centre, double sweep) implements OutlineSegment {
    /**
     * An arc about the origin.
     *
     * @param radius mm
     * @param from angle at its start, rad
     * @param to angle at its end, rad; smaller than the start for a clockwise arc
     */
    public static ArcSegment about(double radius, double from, double to) {
        return new ArcSegment(Point.polar(radius, from), Point.polar(radius, to), new Point(0, 0), to - from);
    }

    /**
     * The arc from one point to another about a centre, less than a full turn.
     *
     * @param start where it starts
     * @param end where it ends
     * @param centre centre of its circle
     * @param anticlockwise which way it runs
     */
    public static ArcSegment between(Point start, Point end, Point centre, boolean anticlockwise) {
        double from = Math.atan2(start.y() - centre.y(), start.x() - centre.x());
        double to = Math.atan2(end.y() - centre.y(), end.x() - centre.x());
        double sweep = to - from;
        if (anticlockwise && sweep < 0) {
            sweep += 2 * Math.PI;
        } else if (!anticlockwise && sweep > 0) {
            sweep -= 2 * Math.PI;
        }
        return new ArcSegment(start, end, centre, sweep);
    }

    /** The radius of its circle, mm. */
    public double radius() {
        return start.distance(centre);
    }

    @Override
    public double bulge() {
        return Math.tan(sweep / 4);
    }

    @Override
    public ArcSegment reversed() {
        return new ArcSegment(end, start, centre, -sweep);
    }

    @Override
    public ArcSegment turned(double angle) {
        return new ArcSegment(start.turned(angle), end.turned(angle), centre.turned(angle), sweep);
    }

    @Override
    public ArcSegment mirrored() {
        return new ArcSegment(start.mirrored(), end.mirrored(), centre.mirrored(), -sweep);
    }

    /**
     * The chord's triangle and the circular segment beyond it, by Green's theorem over the arc.
     *
     * <p>With {@code x = c_x + R cos t}, {@code y = c_y + R sin t}: area {@code 1/2 int x dy - y dx}, moments {@code 1/3
     * int x (x dy - y dx)}, polar moment {@code 1/4 int (x^2 + y^2)(x dy - y dx)}.
     */
    @Override
    public Moments moments() {
        double radius = radius();
        double from = Math.atan2(start.y() - centre.y(), start.x() - centre.x());
        double to = from + sweep;
        double p = centre.x();
        double q = centre.y();
        // x dy - y dx = (R^2 + R (p cos t + q sin t)) dt; x^2 + y^2 = p^2 + q^2 + R^2 + 2 R (p cos t + q sin t).
        double c = Math.sin(to) - Math.sin(from);
        double s = Math.cos(from) - Math.cos(to);
        double cc = sweep / 2 + (Math.sin(2 * to) - Math.sin(2 * from)) / 4;
        double ss = sweep - cc;
        double cs = (Math.cos(2 * from) - Math.cos(2 * to)) / 4;
        double lean = p * c + q * s;
        double leanSquared = p * p * cc + 2 * p * q * cs + q * q * ss;
        double r2 = radius * radius;
        double area = (r2 * sweep + radius * lean) / 2;
        double x = (p * (r2 * sweep + radius * lean) + radius * (r2 * c + radius * (p * cc + q * cs))) / 3;
        double y = (q * (r2 * sweep + radius * lean) + radius * (r2 * s + radius * (p * cs + q * ss))) / 3;
        double square = p * p + q * q + r2;
        double polar = (square * (r2 * sweep + radius * lean) + 2 * radius * (r2 * lean + radius * leanSquared)) / 4;
        return new Moments(area, x, y, polar);
    }

    @Override
    public List<Point> points(double chordError) {
        double radius = radius();
        double step = 2 * Math.acos(Math.max(0, 1 - chordError / radius));
        int count = Math.max(1, (int) Math.ceil(Math.abs(sweep) / step));
        List<Point> points = new ArrayList<>();
        points.add(start);
        for (int i = 1; i < count; i++) {
            double turn = sweep * i / count;
            double c = Math.cos(turn);
            double s = Math.sin(turn);
            double x = start.x() - centre.x();
            double y = start.y() - centre.y();
            points.add(new Point(centre.x() + x * c - y * s, centre.y() + x * s + y * c));
        }
        return points;
    }
}
