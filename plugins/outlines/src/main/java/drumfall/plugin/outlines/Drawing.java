// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import java.util.ArrayList;
import java.util.List;

/**
 * One sheet.
 *
 * @param name file name without its ending
 * @param title for people
 * @param left least x, mm
 * @param bottom least y, mm
 * @param right largest x, mm
 * @param top largest y, mm
 * @param shapes what is drawn, in this order
 */
record Drawing(String name, String title, double left, double bottom, double right, double top, List<Shape> shapes) {
    /** Room around the drawing, mm. */
    static final double MARGIN = 2;

    /** Copies the list. */
    Drawing {
        shapes = List.copyOf(shapes);
    }

    double width() {
        return right - left;
    }

    double height() {
        return top - bottom;
    }

    /**
     * One gear by itself around the origin.
     *
     * @param name file name without its ending
     * @param title for people
     * @param gear the gear
     * @param bore diameter of its hole, mm
     */
    static Drawing of(String name, String title, Gear gear, double bore) {
        double reach = gear.tipRadius() + MARGIN;
        List<Shape> shapes = new ArrayList<>(gear(gear, 0, new Point(0, 0)));
        shapes.add(new Shape.Circle(Layer.BORE, new Point(0, 0), bore / 2));
        return new Drawing(name, title, -reach, -reach, reach, reach, shapes);
    }

    /**
     * Outline and circles of a gear.
     *
     * @param gear the gear
     * @param turn angle of its first tooth, rad
     * @param centre where it stands
     */
    static List<Shape> gear(Gear gear, double turn, Point centre) {
        List<Point> outline =
                gear.outline().stream().map(point -> point.turned(turn)).toList();
        return List.of(
                new Shape.Outline(Layer.OUTLINE, outline).moved(centre.x(), centre.y()),
                new Shape.Circle(Layer.PITCH, centre, gear.pitchRadius()),
                new Shape.Circle(Layer.TIP, centre, gear.tipRadius()),
                new Shape.Circle(Layer.ROOT, centre, gear.rootRadius()));
    }
}
