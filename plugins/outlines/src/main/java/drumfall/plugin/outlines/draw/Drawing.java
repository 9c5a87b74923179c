// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines.draw;

import drumfall.solver.making.solid.Box;
import drumfall.solver.teeth.outline.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One sheet.
 *
 * @param name file name without its ending
 * @param title for people
 * @param shapes what is drawn; at least one
 */
public record Drawing(String name, String title, List<Shape> shapes) {
    /** Room around the drawing, mm. */
    public static final double MARGIN = 2;

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there is nothing to draw
     */
    public Drawing {
        shapes = List.copyOf(shapes);
        if (shapes.isEmpty()) {
            throw new IllegalArgumentException(
                    "The shapes (none) of drawing (" + name + ") must be at least one. Maybe leave it out.");
        }
    }

    /** The shapes by their layers, in the order in which layers are first used. */
    Map<Layer, List<Shape>> layers() {
        Map<Layer, List<Shape>> layers = new LinkedHashMap<>();
        shapes.forEach(shape -> layers.computeIfAbsent(shape.layer(), layer -> new ArrayList<>())
                .add(shape));
        return layers;
    }

    /** What is drawn with the margin around it, mm. */
    Box box() {
        Extent extent = new Extent();
        shapes.forEach(shape -> shape.draw(extent));
        return extent.box();
    }

    /** Grows around what it is shown. */
    private static final class Extent implements Shape.Pen<RuntimeException> {
        private double left = Double.POSITIVE_INFINITY;
        private double bottom = Double.POSITIVE_INFINITY;
        private double right = Double.NEGATIVE_INFINITY;
        private double top = Double.NEGATIVE_INFINITY;

        private void add(double x, double y) {
            left = Math.min(left, x);
            bottom = Math.min(bottom, y);
            right = Math.max(right, x);
            top = Math.max(top, y);
        }

        @Override
        public void outline(Shape.Outline outline) {
            Box around = Box.around(outline.ring());
            add(around.left(), around.bottom());
            add(around.right(), around.top());
        }

        @Override
        public void circle(Shape.Circle circle) {
            Point centre = circle.centre();
            add(centre.x() - circle.radius(), centre.y() - circle.radius());
            add(centre.x() + circle.radius(), centre.y() + circle.radius());
        }

        @Override
        public void line(Shape.Line line) {
            add(line.from().x(), line.from().y());
            add(line.to().x(), line.to().y());
        }

        @Override
        public void text(Shape.Text text) {
            Point at = text.at();
            add(at.x(), at.y());
            if (text.upright()) {
                add(at.x() - text.height(), at.y() + text.length());
            } else {
                add(at.x() + text.length(), at.y() + text.height());
            }
        }

        private Box box() {
            return new Box(left - MARGIN, bottom - MARGIN, right + MARGIN, top + MARGIN);
        }
    }
}
