// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.solver.teeth.outline.Point;
import java.util.ArrayList;
import java.util.List;

/** Measures a closed outline around the origin without knowing how it was made. */
final class OutlineMeasure {
    /** Parts into which an arc is cut at least, and the turn of a part at most, rad. */
    private static final int STEPS = 8;

    private static final double FINEST = 0.01;

    private OutlineMeasure() {}

    /** Runs of points beyond the middle between the innermost and the outermost radius. */
    static int teeth(List<Point> outline) {
        double least =
                outline.stream().mapToDouble(OutlineMeasure::radius).min().orElseThrow();
        double most = outline.stream().mapToDouble(OutlineMeasure::radius).max().orElseThrow();
        double middle = (least + most) / 2;
        int teeth = 0;
        for (int i = 0; i < outline.size(); i++) {
            boolean now = radius(outline.get(i)) > middle;
            boolean before = radius(outline.get((i + outline.size() - 1) % outline.size())) > middle;
            teeth += now && !before ? 1 : 0;
        }
        return teeth;
    }

    static double radius(Point point) {
        return Math.hypot(point.x(), point.y());
    }

    /** Positive if the outline runs counter-clockwise. */
    static double area(List<Point> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            Point from = outline.get(i);
            Point to = outline.get((i + 1) % outline.size());
            twice += from.x() * to.y() - to.x() * from.y();
        }
        return twice / 2;
    }

    /** Whether any two sides that are not neighbours cross; sides further apart than a tooth are not compared. */
    static boolean crossesItself(List<Point> outline) {
        int size = outline.size();
        int reach = Math.min(size - 2, 200);
        for (int i = 0; i < size; i++) {
            for (int k = 2; k <= reach; k++) {
                if ((i + k + 1) % size != i
                        && cross(at(outline, i), at(outline, i + 1), at(outline, i + k), at(outline, i + k + 1))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether any side of one outline crosses any side of another. */
    static boolean cross(List<Point> first, List<Point> second) {
        for (int i = 0; i < first.size(); i++) {
            for (int k = 0; k < second.size(); k++) {
                if (cross(at(first, i), at(first, i + 1), at(second, k), at(second, k + 1))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Points between the ends of an arc, which has the radius and lies on the side that the flags say. */
    static List<Point> arc(Point from, Point to, double radius, boolean large, boolean anticlockwise) {
        double half = Math.hypot(to.x() - from.x(), to.y() - from.y()) / 2;
        double height = Math.sqrt(Math.max(0, radius * radius - half * half));
        double side = large == anticlockwise ? -1 : 1;
        double centreX = (from.x() + to.x()) / 2 - side * height * (to.y() - from.y()) / (2 * half);
        double centreY = (from.y() + to.y()) / 2 + side * height * (to.x() - from.x()) / (2 * half);
        double start = Math.atan2(from.y() - centreY, from.x() - centreX);
        double sweep = Math.atan2(to.y() - centreY, to.x() - centreX) - start;
        sweep += anticlockwise && sweep < 0 ? 2 * Math.PI : !anticlockwise && sweep > 0 ? -2 * Math.PI : 0;
        List<Point> points = new ArrayList<>();
        int steps = STEPS + (int) (Math.abs(sweep) / FINEST);
        for (int i = 1; i < steps; i++) {
            double angle = start + sweep * i / steps;
            points.add(new Point(centreX + radius * Math.cos(angle), centreY + radius * Math.sin(angle)));
        }
        return points;
    }

    private static Point at(List<Point> outline, int index) {
        return outline.get(index % outline.size());
    }

    private static boolean cross(Point a, Point b, Point c, Point d) {
        return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    }

    private static double side(Point a, Point b, Point c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }
}
