// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import java.util.List;

/** Measures a closed outline around the origin without knowing how it was made. */
final class OutlineMeasure {
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
