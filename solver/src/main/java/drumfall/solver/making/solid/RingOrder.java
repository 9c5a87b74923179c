// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.solid;

import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Whether the rings of a figure lie as rings must: no two cross, holes in their outline, outlines side by side. */
final class RingOrder {
    /** Rings nearer than this, in mm, leave no wall that a printer could lay. */
    private static final double CHORD_ERROR = 0.02;

    private RingOrder() {}

    static void check(List<Outline> outlines) {
        if (outlines.isEmpty()) {
            throw new IllegalArgumentException(
                    "The outlines (none) of a region must be at least one. Maybe leave the slab out.");
        }
        List<List<Point>> polygons = new ArrayList<>();
        for (Outline outline : outlines) {
            polygons.add(outline.outer().polygon(CHORD_ERROR));
            for (Ring hole : outline.holes()) {
                polygons.add(hole.polygon(CHORD_ERROR));
            }
        }
        checkCrossings(polygons);
        checkNesting(outlines, polygons);
    }

    private static void checkNesting(List<Outline> outlines, List<List<Point>> polygons) {
        int outer = 0;
        for (Outline outline : outlines) {
            int end = outer + outline.holes().size() + 1;
            for (int i = 0; i < polygons.size(); i++) {
                if (i == outer) {
                    continue;
                }
                boolean own = i > outer && i < end;
                if (own != isInMaterial(polygons, i, outer, end)) {
                    throw misplaced(own ? "hole" : "outline", own ? "inside its outline only" : "beside the others");
                }
            }
            outer = end;
        }
    }

    /** Whether a ring begins inside an outline and in none of its other holes. */
    private static boolean isInMaterial(List<List<Point>> polygons, int ring, int outer, int end) {
        Point start = polygons.get(ring).get(0);
        if (!contains(polygons.get(outer), start)) {
            return false;
        }
        for (int hole = outer + 1; hole < end; hole++) {
            if (hole != ring && contains(polygons.get(hole), start)) {
                return false;
            }
        }
        return true;
    }

    private static IllegalArgumentException misplaced(String what, String rule) {
        return new IllegalArgumentException(
                "The place of a ring (" + what + ") of a region must be " + rule + ". Maybe check its centre.");
    }

    /** Whether a point lies in a polygon, by the parity of crossings of a ray to the right. */
    static boolean contains(List<Point> polygon, Point p) {
        boolean inside = false;
        Point last = polygon.get(polygon.size() - 1);
        for (Point next : polygon) {
            if (next.y() > p.y() != last.y() > p.y()) {
                double x = next.x() + (p.y() - next.y()) / (last.y() - next.y()) * (last.x() - next.x());
                inside ^= p.x() < x;
            }
            last = next;
        }
        return inside;
    }

    private record Side(Point a, Point b) {
        double left() {
            return Math.min(a.x(), b.x());
        }

        double right() {
            return Math.max(a.x(), b.x());
        }

        boolean crosses(Side other) {
            return apart(a, b, other.a, other.b) && apart(other.a, other.b, a, b);
        }

        private static boolean apart(Point a, Point b, Point one, Point two) {
            return side(a, b, one) * side(a, b, two) < 0;
        }

        private static double side(Point a, Point b, Point p) {
            return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
        }
    }

    /** Sweeps over all sides from left to right. */
    private static void checkCrossings(List<List<Point>> polygons) {
        List<Side> sides = new ArrayList<>();
        for (List<Point> polygon : polygons) {
            Point last = polygon.get(polygon.size() - 1);
            for (Point next : polygon) {
                sides.add(new Side(last, next));
                last = next;
            }
        }
        sides.sort(Comparator.comparingDouble(Side::left));
        List<Side> open = new ArrayList<>();
        for (Side side : sides) {
            open.removeIf(before -> before.right() < side.left());
            for (Side before : open) {
                if (before.crosses(side)) {
                    throw new IllegalArgumentException("The rings of a region must not cross (at x "
                            + (float) side.a().x() + " mm, y "
                            + (float) side.a().y()
                            + " mm). Maybe leave more material between them.");
                }
            }
            open.add(side);
        }
    }
}
