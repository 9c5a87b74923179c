// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.solver.teeth.outline.Point;
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
     */
    static Drawing of(String name, String title, Gear gear) {
        double reach = gear.tipRadius() + MARGIN;
        List<Shape> shapes = new ArrayList<>(gear(gear, 0, new Point(0, 0)));
        shapes.add(new Shape.Circle(Layer.BORE, new Point(0, 0), gear.bore() / 2));
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
        List<Shape> shapes = new ArrayList<>();
        gear.rings(turn).forEach(ring -> shapes.add(new Shape.Outline(Layer.OUTLINE, ring, centre)));
        shapes.add(new Shape.Circle(Layer.PITCH, centre, gear.pitchRadius()));
        shapes.add(new Shape.Circle(Layer.TIP, centre, gear.tipRadius()));
        shapes.add(new Shape.Circle(Layer.ROOT, centre, gear.rootRadius()));
        return shapes;
    }
}
