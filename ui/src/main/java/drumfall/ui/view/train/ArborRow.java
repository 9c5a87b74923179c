// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The arbors in a row at their centre distances, folded into a zigzag where a straight row would be too long; m.
 *
 * @param faces the train
 * @param fold angle of each link against the level, rad, down and up in turn; 0 for a straight row
 */
record ArborRow(TrainFaces faces, double fold) {
    /** A straight row may be this much longer than the room before it is folded. */
    private static final double TOO_LONG = 1.4;

    private static final int FLATTEST = 21;
    private static final int STEEPEST = 56;
    private static final int STEP = 7;

    /**
     * A straight row, or if that is too long for the room the least folded one that suits it.
     *
     * @param faces the train
     * @param aspect width of the room over its height
     */
    static ArborRow fitting(TrainFaces faces, double aspect) {
        ArborRow straight = new ArborRow(faces, 0);
        if (straight.aspect() <= TOO_LONG * aspect) {
            return straight;
        }
        return IntStream.iterate(FLATTEST, degrees -> degrees <= STEEPEST, degrees -> degrees + STEP)
                .mapToObj(degrees -> new ArborRow(faces, Math.toRadians(degrees)))
                .filter(row -> row.aspect() <= aspect)
                .findFirst()
                .orElseGet(() -> new ArborRow(faces, Math.toRadians(STEEPEST)));
    }

    double aspect() {
        Rectangle2D bounds = bounds();
        return bounds.getWidth() / bounds.getHeight();
    }

    boolean straight() {
        return fold == 0;
    }

    /** Places of the arbors from the drum, y downwards. */
    List<Point2D> places() {
        List<Point2D> places = new ArrayList<>();
        Point2D place = new Point2D.Double();
        places.add(place);
        for (int i = 0; i < faces.meshes().size(); i++) {
            double distance = faces.meshes().get(i).centreDistance();
            double drop = i % 2 == 0 ? Math.sin(fold) : -Math.sin(fold);
            place = new Point2D.Double(place.getX() + distance * Math.cos(fold), place.getY() + distance * drop);
            places.add(place);
        }
        return places;
    }

    /** Bounds of all tips. */
    Rectangle2D bounds() {
        List<Point2D> places = places();
        Rectangle2D bounds = around(places.get(0), faces.flange());
        for (int i = 0; i < faces.meshes().size(); i++) {
            bounds.add(around(places.get(i), faces.meshes().get(i).wheelTip()));
        }
        bounds.add(around(places.get(places.size() - 1), faces.escape()));
        return bounds;
    }

    private static Rectangle2D around(Point2D centre, double radius) {
        return new Rectangle2D.Double(centre.getX() - radius, centre.getY() - radius, 2 * radius, 2 * radius);
    }
}
