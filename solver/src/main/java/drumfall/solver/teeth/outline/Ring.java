// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed chain of lines and arcs.
 *
 * @param segments the pieces in order, each starting where the one before it ended, the first where the last ended
 */
public record Ring(List<OutlineSegment> segments) {
    private static final double JOIN = 1e-6;

    /**
     * Checks that the chain is closed.
     *
     * @throws IllegalArgumentException if it is empty or has a gap of a nanometre or more
     */
    public Ring {
        segments = List.copyOf(segments);
        if (segments.isEmpty()) {
            throw new IllegalArgumentException("The segments (none) of a ring must be at least one. Maybe add some.");
        }
        Point last = segments.get(segments.size() - 1).end();
        for (OutlineSegment segment : segments) {
            double gap = last.distance(segment.start());
            if (!(gap < JOIN)) {
                throw new IllegalArgumentException("The gap (" + gap + ") in a ring must be below " + JOIN
                        + " mm. Maybe check the order of its segments.");
            }
            last = segment.end();
        }
    }

    /**
     * A circle run anticlockwise, in two halves.
     *
     * @param centre its centre
     * @param radius mm, &gt; 0
     */
    public static Ring circle(Point centre, double radius) {
        Point right = new Point(centre.x() + radius, centre.y());
        Point left = new Point(centre.x() - radius, centre.y());
        return new Ring(
                List.of(new ArcSegment(right, left, centre, Math.PI), new ArcSegment(left, right, centre, Math.PI)));
    }

    /** Area and moments; negative for a ring run clockwise. */
    public Moments moments() {
        return segments.stream().map(OutlineSegment::moments).reduce(Moments.ZERO, Moments::plus);
    }

    /** The same ring run the other way. */
    public Ring reversed() {
        List<OutlineSegment> back = new ArrayList<>();
        for (int i = segments.size() - 1; i >= 0; i--) {
            back.add(segments.get(i).reversed());
        }
        return new Ring(back);
    }

    /** The ring turned about the origin by an angle in radians. */
    public Ring turned(double angle) {
        return new Ring(segments.stream().map(s -> s.turned(angle)).toList());
    }

    /**
     * The corners of a polygon that follows the ring; the first is not repeated.
     *
     * @param chordError greatest distance of a chord from the ring, mm, &gt; 0
     */
    public List<Point> polygon(double chordError) {
        return segments.stream().flatMap(s -> s.points(chordError).stream()).toList();
    }
}
