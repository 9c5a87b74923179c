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
        double width = text.width(figure, FONT * unit);
        boolean fits = Math.abs(to - from) > width + 4 * ARROW * unit;
        double middle = fits ? (from + to) / 2 : Math.max(from, to) + width / 2 + 2 * ARROW * unit;
        write(figure, middle, at, width);
    }

    /** A dimension upwards beside a line; extension lines run to it from two places. All px. */
    void up(double from, double to, double at, double fromX, double toX, String figure) {
        extension(fromX, from, at, from);
        extension(toX, to, at, to);
        AffineTransform before = graphics.getTransform();
        graphics.rotate(-Math.PI / 2);
        measure(-from, at, -to, at);
        double width = text.width(figure, FONT * unit);
        boolean fits = Math.abs(to - from) > width + 4 * ARROW * unit;
        double middle = fits ? -(from + to) / 2 : Math.max(-from, -to) + width / 2 + 2 * ARROW * unit;
        write(figure, middle, at, width);
        graphics.setTransform(before);
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

    private void write(String figure, double middle, double at, double width) {
        double half = width / 2 + 3 * unit;
        graphics.setColor(inks.paper());
        graphics.fill(new Rectangle2D.Double(middle - half, at - 8 * unit, 2 * half, 16 * unit));
        graphics.setColor(inks.line());
        text.draw(graphics, figure, middle - width / 2, at + FONT * unit * 0.36, FONT * unit);
    }
}
