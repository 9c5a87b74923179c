// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import java.util.List;

/** A directed piece of a ring: a line or a true circular arc. */
public sealed interface OutlineSegment permits LineSegment, ArcSegment {
    /** Where it starts. */
    Point start();

    /** Where it ends. */
    Point end();

    /** The bulge of an interchange polyline: the tangent of a quarter of the turn, positive anticlockwise, 0 for a line. */
    double bulge();

    /** The same piece the other way round. */
    OutlineSegment reversed();

    /** The piece turned about the origin by an angle in radians. */
    OutlineSegment turned(double angle);

    /** The piece mirrored in the x axis, its direction kept. */
    OutlineSegment mirrored();

    /** What the region between this piece and the origin adds to a ring's moments. */
    Moments moments();

    /**
     * Points along the piece, its start included and its end left out.
     *
     * @param chordError greatest distance of a chord from the piece, mm, &gt; 0
     */
    List<Point> points(double chordError);
}
