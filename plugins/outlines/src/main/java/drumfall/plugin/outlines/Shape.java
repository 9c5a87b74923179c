// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;

/** One thing drawn. */
sealed interface Shape {
    /** The layer it lies on. */
    Layer layer();

    /** Puts it into a file. */
    <X extends Exception> void draw(Pen<X> pen) throws X;

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
     * A closed chain of lines and true arcs.
     *
     * @param layer its layer
     * @param ring the chain
     * @param at where the chain's origin stands
     */
    record Outline(Layer layer, Ring ring, Point at) implements Shape {
        @Override
        public <X extends Exception> void draw(Pen<X> pen) throws X {
            pen.outline(this);
        }

        /** A point of the chain where it stands. */
        Point place(Point point) {
            return new Point(point.x() + at.x(), point.y() + at.y());
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
    }
}
