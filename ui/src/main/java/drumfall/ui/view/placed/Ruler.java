// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import drumfall.ui.view.train.Inks;
import drumfall.ui.view.train.Pens;
import drumfall.ui.view.train.TabularText;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * Draws dimensions: a narrow line between arrows, the figure in a gap of it, after ISO 129-1:2018.
 *
 * @param graphics what is drawn on
 * @param inks the inks
 * @param text the letters
 * @param unit size of a drawing unit, px
 */
record Ruler(Graphics2D graphics, Inks inks, TabularText text, double unit) {
    private static final double FONT = 11;
    private static final double ARROW = 6;

    /** A dimension across at a height; extension lines run to it from two heights. All px. */
    void across(double from, double to, double at, double fromY, double toY, String figure) {
        extension(from, fromY, from, at);
        extension(to, toY, to, at);
        measure(from, at, to, at);
        figure(from, to, at, figure);
    }

    /** A dimension upwards beside a line; extension lines run to it from two places. All px. */
    void up(double from, double to, double at, double fromX, double toX, String figure) {
        extension(fromX, from, at, from);
        extension(toX, to, at, to);
        AffineTransform before = graphics.getTransform();
        graphics.rotate(-Math.PI / 2);
        measure(-from, at, -to, at);
        figure(-from, -to, at, figure);
        graphics.setTransform(before);
    }

    /** Where the figure of a dimension stands, after ISO 129-1:2018. */
    enum Stand {
        /** In a gap of the dimension line. */
        IN_GAP,
        /** Above the line, which is too short for a gap. */
        ABOVE,
        /** Beyond the end of a line that is shorter than the figure. */
        BEYOND;

        /**
         * Where there is room.
         *
         * @param line length of the dimension line, px
         * @param figure width of the figure, px
         * @param unit size of a drawing unit, px
         */
        static Stand of(double line, double figure, double unit) {
            if (line > figure + 4 * ARROW * unit) {
                return IN_GAP;
            }
            return line > figure ? ABOVE : BEYOND;
        }
    }

    private void figure(double from, double to, double at, String figure) {
        double width = text.width(figure, FONT * unit);
        double middle = (from + to) / 2;
        switch (Stand.of(Math.abs(to - from), width, unit)) {
            case IN_GAP -> {
                double half = width / 2 + 3 * unit;
                graphics.setColor(inks.paper());
                graphics.fill(new Rectangle2D.Double(middle - half, at - 8 * unit, 2 * half, 16 * unit));
                write(figure, middle, at + FONT * unit * 0.36, width);
            }
            case ABOVE -> write(figure, middle, at - 4 * unit, width);
            case BEYOND ->
                write(figure, Math.max(from, to) + width / 2 + 2 * ARROW * unit, at + FONT * unit * 0.36, width);
        }
    }

    private void extension(double x, double y, double toX, double toY) {
        graphics.setColor(inks.hairline());
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(new Line2D.Double(x, y, toX, toY));
    }

    private void measure(double x, double y, double toX, double toY) {
        graphics.setColor(inks.line());
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(new Line2D.Double(x, y, toX, toY));
        double way = Math.signum(toX - x);
        arrow(x, y, way);
        arrow(toX, toY, -way);
    }

    private void arrow(double x, double y, double way) {
        Path2D head = new Path2D.Double();
        head.moveTo(x, y);
        head.lineTo(x + way * ARROW * unit, y - 1.8 * unit);
        head.lineTo(x + way * ARROW * unit, y + 1.8 * unit);
        head.closePath();
        graphics.fill(head);
    }

    private void write(String figure, double middle, double baseline, double width) {
        graphics.setColor(inks.line());
        text.draw(graphics, figure, middle - width / 2, baseline, FONT * unit);
    }
}
