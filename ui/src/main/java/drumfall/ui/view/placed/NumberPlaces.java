// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/** Where the numbers of arbors are written: beside each, on the side with most room from other arbors and numbers. */
final class NumberPlaces {
    private static final int SIDES = 8;

    private NumberPlaces() {}

    /**
     * A place for each number.
     *
     * @param arbors where the arbors are, px
     * @param apart from an arbor to the middle of its number, px
     */
    static List<Point2D> of(List<Point2D> arbors, double apart) {
        List<Point2D> places = new ArrayList<>();
        for (Point2D arbor : arbors) {
            Point2D best = beside(arbor, 0, apart);
            for (int side = 1; side < SIDES; side++) {
                Point2D next = beside(arbor, side, apart);
                if (room(next, arbor, arbors, places) > room(best, arbor, arbors, places) + 1) {
                    best = next;
                }
            }
            places.add(best);
        }
        return places;
    }

    /** Upper right first, then anticlockwise. */
    private static Point2D beside(Point2D arbor, int side, double apart) {
        double angle = (0.5 + side) * 2 * Math.PI / SIDES + Math.PI / SIDES;
        return new Point2D.Double(arbor.getX() + apart * Math.cos(angle), arbor.getY() - apart * Math.sin(angle));
    }

    /** Distance to the nearest other thing, counted up to what no longer matters. */
    private static double room(Point2D place, Point2D own, List<Point2D> arbors, List<Point2D> taken) {
        double far = 4 * place.distance(own);
        double nearest = far;
        for (Point2D arbor : arbors) {
            nearest = arbor.equals(own) ? nearest : Math.min(nearest, arbor.distance(place));
        }
        for (Point2D number : taken) {
            nearest = Math.min(nearest, number.distance(place));
        }
        return nearest;
    }
}
