// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import java.util.List;

/**
 * A straight piece of a ring.
 *
 * @param start where it starts
 * @param end where it ends
 */
public record LineSegment(Point start, Point end) implements OutlineSegment {
    @Override
    public double bulge() {
        return 0;
    }

    @Override
    public LineSegment reversed() {
        return new LineSegment(end, start);
    }

    @Override
    public LineSegment turned(double angle) {
        return new LineSegment(start.turned(angle), end.turned(angle));
    }

    @Override
    public LineSegment mirrored() {
        return new LineSegment(start.mirrored(), end.mirrored());
    }

    /** The triangle over the origin. */
    @Override
    public Moments moments() {
        double cross = start.x() * end.y() - end.x() * start.y();
        double sumX = start.x() + end.x();
        double sumY = start.y() + end.y();
        double squares = start.x() * start.x()
                + start.x() * end.x()
                + end.x() * end.x()
                + start.y() * start.y()
                + start.y() * end.y()
                + end.y() * end.y();
        return new Moments(cross / 2, cross * sumX / 6, cross * sumY / 6, cross * squares / 12);
    }

    @Override
    public List<Point> points(double chordError) {
        return List.of(start);
    }
}
