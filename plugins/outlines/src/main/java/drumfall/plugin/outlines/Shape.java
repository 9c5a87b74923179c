// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import java.util.List;

/** One thing drawn. */
sealed interface Shape {
    /** The layer it lies on. */
    Layer layer();

    /** Puts it into a file. */
    <X extends Exception> void draw(Pen<X> pen) throws X;

    /** The same shape elsewhere. */
    Shape moved(double right, double up);

    /**
     * Draws the kinds of shapes.
     *
     * @param <X> what can go wrong
     */
    interface Pen<X extends Exception> {
        /** Draws a closed outline. */
        void outline(Outline outline) throws X;

        /** Draws a circle. */
        void circle(Circle circle) throws X;

        /** Draws a straight line. */
        void line(Line line) throws X;
    }

    /**
     * A closed polygon.
     *
     * @param layer its layer
     * @param points at least three, the first not repeated
     */
    record Outline(Layer layer, List<Point> points) implements Shape {
        /** Copies the list. */
        public Outline {
            points = List.copyOf(points);
        }

        @Override
        public <X extends Exception> void draw(Pen<X> pen) throws X {
            pen.outline(this);
        }

        @Override
        public Outline moved(double right, double up) {
            return new Outline(
                    layer, points.stream().map(point -> point.moved(right, up)).toList());
        }
    }

    /**
     * A circle.
     *
     * @param layer its layer
     * @param centre its centre
     * @param radius mm, positive
     */
    record Circle(Layer layer, Point centre, double radius) implements Shape {
        @Override
        public <X extends Exception> void draw(Pen<X> pen) throws X {
            pen.circle(this);
        }

        @Override
        public Circle moved(double right, double up) {
            return new Circle(layer, centre.moved(right, up), radius);
        }
    }

    /**
     * A straight line.
     *
     * @param layer its layer
     * @param from one end
     * @param to the other end
     */
    record Line(Layer layer, Point from, Point to) implements Shape {
        @Override
        public <X extends Exception> void draw(Pen<X> pen) throws X {
            pen.line(this);
        }

        @Override
        public Line moved(double right, double up) {
            return new Line(layer, from.moved(right, up), to.moved(right, up));
        }
    }
}
