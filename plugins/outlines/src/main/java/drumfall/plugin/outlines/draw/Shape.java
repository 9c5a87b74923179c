// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines.draw;

import drumfall.solver.teeth.outline.ArcSegment;
import drumfall.solver.teeth.outline.OutlineSegment;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.List;

/** One thing drawn. */
public sealed interface Shape {
    /** Lengths, mm, and angles, rad, nearer than this are one. */
    double SAME = 1e-9;

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

        /** Writes a text. */
        void text(Text text) throws X;
    }

    /**
     * A ring as it is drawn: a circle if it is one all round.
     *
     * @param layer its layer
     * @param ring the ring, mm
     */
    static Shape of(Layer layer, Ring ring) {
        return circle(ring) ? new Circle(layer, centre(ring), radius(ring)) : new Outline(layer, ring);
    }

    /** Whether a ring is one circle, run once. */
    static boolean circle(Ring ring) {
        List<OutlineSegment> pieces = ring.segments();
        double turn = 0;
        for (OutlineSegment piece : pieces) {
            if (!(piece instanceof ArcSegment arc)
                    || !arc.centre().equals(centre(ring))
                    || Math.abs(arc.radius() - radius(ring)) > SAME) {
                return false;
            }
            turn += arc.sweep();
        }
        return Math.abs(Math.abs(turn) - 2 * Math.PI) < SAME;
    }

    private static Point centre(Ring ring) {
        return ((ArcSegment) ring.segments().get(0)).centre();
    }

    private static double radius(Ring ring) {
        return ((ArcSegment) ring.segments().get(0)).radius();
    }

    /**
     * A closed chain of lines and true arcs.
     *
     * @param layer its layer
     * @param ring the chain
     */
    record Outline(Layer layer, Ring ring) implements Shape {
        @Override
        public <X extends Exception> void draw(Pen<X> pen) throws X {
            pen.outline(this);
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

    /**
     * One line of text.
     *
     * @param layer its layer
     * @param at left end of its foot
     * @param words what it says
     * @param height of its capitals, mm, positive
     * @param upright whether it runs upwards, its foot to the right
     */
    record Text(Layer layer, Point at, String words, double height, boolean upright) implements Shape {
        /** Width of a character over the height of capitals, widely reckoned. */
        private static final double CHARACTER = 0.9;

        /** A text that runs to the right. */
        public static Text level(Layer layer, Point at, String words, double height) {
            return new Text(layer, at, words, height, false);
        }

        /** About how much room so many characters take, mm. */
        public static double length(int characters, double height) {
            return CHARACTER * height * characters;
        }

        /** About its length, mm. */
        public double length() {
            return length(words.length(), height);
        }

        @Override
        public <X extends Exception> void draw(Pen<X> pen) throws X {
            pen.text(this);
        }
    }
}
