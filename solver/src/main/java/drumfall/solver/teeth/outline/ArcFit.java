// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import drumfall.solver.teeth.flank.ArcPiece;
import drumfall.solver.teeth.flank.FlankPiece;
import drumfall.solver.teeth.flank.FlankPoint;
import drumfall.solver.teeth.flank.RadialPiece;
import java.util.ArrayList;
import java.util.List;

/**
 * A flank piece as lines and arcs, from root to tip, on the side of rising angle.
 *
 * <p>A curve is followed by pairs of arcs that meet with a common tangent and share the curve's own at both ends (biarcs
 * with equal tangent lengths; D. S. Meek and D. J. Walton, "Approximating smooth planar curves by arc splines",
 * <i>Journal of Computational and Applied Mathematics</i> 59 (1995), from memory). A stretch is halved until both arcs
 * stay within the tolerance.
 */
final class ArcFit {
    private static final int PROBES = 8;
    private static final int DEEPEST = 12;
    private static final double STRAIGHT = 1e-12;

    private final FlankPiece piece;
    private final double module;
    private final double thinning;
    private final double tolerance;

    ArcFit(FlankPiece piece, double module, double thinning, double tolerance) {
        this.piece = piece;
        this.module = module;
        this.thinning = thinning;
        this.tolerance = tolerance;
    }

    /** The segments up to a share of the piece. */
    List<OutlineSegment> upTo(double share) {
        List<OutlineSegment> fitted = new ArrayList<>();
        if (piece instanceof RadialPiece) {
            fitted.add(new LineSegment(point(0), point(share)));
        } else if (piece instanceof ArcPiece arc) {
            Point centre = Point.polar(arc.centreRadius() * module, arc.centreAngle() - thinning);
            double turn = share * (arc.startTurn() - arc.endTurn());
            fitted.add(new ArcSegment(point(0), point(share), centre, arc.hollow() ? turn : -turn));
        } else {
            fit(0, share, 0, fitted);
        }
        return fitted;
    }

    private void fit(double from, double to, int depth, List<OutlineSegment> fitted) {
        List<OutlineSegment> pair = pair(from, to);
        if (depth < DEEPEST && !follows(pair, from, to)) {
            double middle = (from + to) / 2;
            fit(from, middle, depth + 1, fitted);
            fit(middle, to, depth + 1, fitted);
        } else {
            fitted.addAll(pair);
        }
    }

    private List<OutlineSegment> pair(double from, double to) {
        Point a = point(from);
        Point b = point(to);
        double ta = heading(from);
        double tb = heading(to);
        double vx = b.x() - a.x();
        double vy = b.y() - a.y();
        double along = vx * (Math.cos(ta) + Math.cos(tb)) + vy * (Math.sin(ta) + Math.sin(tb));
        double half = Math.sin((tb - ta) / 2);
        double bend = 4 * half * half;
        double square = vx * vx + vy * vy;
        // The root of bend d^2 + 2 along d - square = 0, in the form that stands when the bend vanishes.
        double d = square / (along + Math.sqrt(along * along + bend * square));
        Point joint = new Point(
                (a.x() + b.x() + d * (Math.cos(ta) - Math.cos(tb))) / 2,
                (a.y() + b.y() + d * (Math.sin(ta) - Math.sin(tb))) / 2);
        return List.of(arc(a, ta, joint), arc(b, tb + Math.PI, joint).reversed());
    }

    /** The arc that leaves a point under a heading and ends at another. */
    private static OutlineSegment arc(Point start, double heading, Point end) {
        double vx = end.x() - start.x();
        double vy = end.y() - start.y();
        double side = -Math.sin(heading) * vx + Math.cos(heading) * vy;
        double square = vx * vx + vy * vy;
        if (Math.abs(side) < STRAIGHT) {
            return new LineSegment(start, end);
        }
        double radius = square / (2 * side);
        Point centre = new Point(start.x() - Math.sin(heading) * radius, start.y() + Math.cos(heading) * radius);
        double forward = Math.cos(heading) * vx + Math.sin(heading) * vy;
        return new ArcSegment(start, end, centre, 2 * Math.atan2(side, forward));
    }

    private boolean follows(List<OutlineSegment> pair, double from, double to) {
        Point joint = pair.get(0).end();
        Point a = pair.get(0).start();
        Point b = pair.get(1).end();
        for (int i = 1; i < PROBES; i++) {
            Point p = point(from + (to - from) * i / PROBES);
            double beyond = (p.x() - joint.x()) * (b.x() - a.x()) + (p.y() - joint.y()) * (b.y() - a.y());
            if (!(off(beyond < 0 ? pair.get(0) : pair.get(1), p) < tolerance)) {
                return false;
            }
        }
        return true;
    }

    private static double off(OutlineSegment segment, Point p) {
        if (segment instanceof ArcSegment arc) {
            return Math.abs(p.distance(arc.centre()) - arc.radius());
        }
        double vx = segment.end().x() - segment.start().x();
        double vy = segment.end().y() - segment.start().y();
        double cross = vx * (p.y() - segment.start().y())
                - vy * (p.x() - segment.start().x());
        return Math.abs(cross) / Math.hypot(vx, vy);
    }

    private Point point(double share) {
        FlankPoint p = piece.at(share);
        return Point.polar(p.radius() * module, p.halfAngle() - thinning);
    }

    /** The direction of the flank towards its tip. */
    private double heading(double share) {
        FlankPoint p = piece.at(share);
        return p.halfAngle() - thinning - Math.asin(Math.max(-1, Math.min(1, p.radialNormal())));
    }
}
