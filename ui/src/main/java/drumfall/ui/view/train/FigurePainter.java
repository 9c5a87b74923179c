// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/**
 * Draws figures with their marks: held between two jaws, tried after an arrow, missed beside a triangle.
 *
 * @param graphics set up for fine lines
 * @param inks inks
 * @param text draws digits in equal cells
 * @param unit drawing unit, px
 */
record FigurePainter(Graphics2D graphics, Inks inks, TabularText text, double unit) {
    /** Half the width of the mark of a missed demand, drawing units. */
    static final double MARK = 5;

    /**
     * Draws a spot.
     *
     * @param spot the figure
     * @param pointed whether the pointer is on it
     * @param focused whether the keyboard is on it
     */
    void paint(StripSpot spot, boolean pointed, boolean focused) {
        ground(spot, pointed, focused);
        StripSpot.Parts parts = spot.parts(text);
        if (spot.tried().isPresent()) {
            Figure before =
                    StripSpot.withoutSharedUnit(spot.shown(), spot.tried().get());
            figure(before, parts.old(), parts.baseline(), parts.oldSize(), inks.lighter());
            arrow(parts.arrow(before), parts.arrowWidth(), spot.box().getCenterY());
            figure(spot.tried().get(), parts.current(before), parts.baseline(), spot.size(), inks.role(Role.COMPARED));
        } else {
            figure(spot.shown(), parts.old(), parts.baseline(), spot.size(), ink(spot));
        }
        if (spot.held()) {
            jaws(spot.box());
        }
        if (spot.missed()) {
            triangle(spot.missedMark(unit), spot.box().getCenterY(), MARK * unit);
        }
    }

    private Color ink(StripSpot spot) {
        if (spot.missed()) {
            return inks.role(Role.MISSED);
        }
        return spot.held() ? inks.role(Role.HELD) : inks.line();
    }

    private void ground(StripSpot spot, boolean pointed, boolean focused) {
        Rectangle2D box = spot.box();
        Shape round = new RoundRectangle2D.Double(
                box.getX(), box.getY(), box.getWidth(), box.getHeight(), 4 * unit, 4 * unit);
        if (spot.held() || pointed || spot.tried().isPresent()) {
            graphics.setColor(groundInk(spot, pointed));
            graphics.fill(round);
        }
        if (spot.tried().isPresent() && spot.figure().isPresent()) {
            graphics.setColor(inks.role(Role.COMPARED));
            graphics.setStroke(Pens.narrow(unit));
            graphics.draw(round);
        }
        if (focused) {
            graphics.setColor(inks.role(Role.CHOSEN));
            graphics.setStroke(Pens.solid(1.8 * unit));
            graphics.draw(grown(box, 2.5 * unit));
        }
    }

    private Color groundInk(StripSpot spot, boolean pointed) {
        if (spot.held()) {
            return inks.wash(Role.HELD);
        }
        return pointed ? inks.wash(Role.CHOSEN) : inks.paper();
    }

    private Shape grown(Rectangle2D box, double by) {
        return new RoundRectangle2D.Double(
                box.getX() - by,
                box.getY() - by,
                box.getWidth() + 2 * by,
                box.getHeight() + 2 * by,
                6 * unit,
                6 * unit);
    }

    void figure(Figure figure, double x, double baseline, double size, Color ink) {
        graphics.setColor(ink);
        text.draw(graphics, figure.number(), x, baseline, size);
        if (!figure.unit().isEmpty()) {
            double unitX = x + text.width(figure.number(), size) + StripSpot.unitGap(size);
            graphics.setColor(inks.lighter());
            text.draw(graphics, figure.unit(), unitX, baseline, StripSpot.unitSize(size));
        }
    }

    private void arrow(double x, double width, double y) {
        graphics.setColor(inks.role(Role.COMPARED));
        graphics.setStroke(Pens.outline(unit));
        graphics.draw(new Line2D.Double(x, y, x + width, y));
        double head = 3 * unit;
        graphics.draw(new Line2D.Double(x + width - head, y - head, x + width, y));
        graphics.draw(new Line2D.Double(x + width - head, y + head, x + width, y));
    }

    /** Two jaws grip the figure from left and right; a screw head closes them. */
    private void jaws(Rectangle2D box) {
        graphics.setColor(inks.role(Role.HELD));
        graphics.setStroke(Pens.solid(1.9 * unit));
        double foot = 4 * unit;
        jaw(box.getMinX() - unit, box.getMinY(), box.getMaxY(), foot);
        jaw(box.getMaxX() + unit, box.getMinY(), box.getMaxY(), -foot);
        graphics.fill(GearShape.circle(box.getMaxX() + 3.8 * unit, box.getCenterY(), 2.1 * unit));
    }

    private void jaw(double x, double top, double bottom, double foot) {
        Path2D path = new Path2D.Double();
        path.moveTo(x + foot, top);
        path.lineTo(x, top);
        path.lineTo(x, bottom);
        path.lineTo(x + foot, bottom);
        graphics.draw(path);
    }

    /** The mark of a missed demand: a solid triangle with a bar cut out. */
    void triangle(double x, double y, double half) {
        Path2D path = new Path2D.Double();
        path.moveTo(x, y - half);
        path.lineTo(x + half, y + 0.75 * half);
        path.lineTo(x - half, y + 0.75 * half);
        path.closePath();
        graphics.setColor(inks.role(Role.MISSED));
        graphics.fill(path);
        graphics.setColor(inks.paper());
        graphics.setStroke(Pens.solid(1.2 * unit));
        graphics.draw(new Line2D.Double(x, y - 0.3 * half, x, y + 0.15 * half));
        graphics.fill(GearShape.circle(x, y + 0.48 * half, 0.7 * unit));
    }

    /** A number centred on a point. */
    void centred(String number, double x, double y, double size) {
        text.draw(graphics, number, x - text.width(number, size) / 2, y + 0.36 * size, size);
    }

    void note(StripPlan.Note note) {
        graphics.setColor(ink(note.tone()));
        text.draw(graphics, note.text(), note.x(), note.baseline(), note.size());
        if (note.tone() == StripPlan.Tone.MISSED) {
            triangle(note.x() - 8 * unit, note.baseline() - 0.32 * note.size(), MARK * unit);
        }
    }

    private Color ink(StripPlan.Tone tone) {
        return switch (tone) {
            case LIGHTER -> inks.lighter();
            case MISSED -> inks.role(Role.MISSED);
            case COMPARED -> inks.role(Role.COMPARED);
        };
    }

    void gauge(StripPlan.Gauge gauge) {
        Rectangle2D box = gauge.box();
        double y = box.getCenterY();
        graphics.setColor(inks.hairline());
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(new Line2D.Double(box.getMinX(), y, box.getMaxX(), y));
        if (gauge.from() >= 0) {
            tick(box, gauge.from());
        }
        tick(box, gauge.to());
        graphics.setColor(gauge.missed() ? inks.role(Role.MISSED) : inks.line());
        double x = box.getMinX() + gauge.value() * box.getWidth();
        graphics.fill(gauge.missed() ? diamond(x, y) : GearShape.circle(x, y, 2.8 * unit));
    }

    private void tick(Rectangle2D box, double share) {
        double x = box.getMinX() + share * box.getWidth();
        graphics.draw(new Line2D.Double(x, box.getMinY(), x, box.getMaxY()));
    }

    private Shape diamond(double x, double y) {
        double half = 4 * unit;
        Path2D path = new Path2D.Double();
        path.moveTo(x, y - half);
        path.lineTo(x + half, y);
        path.lineTo(x, y + half);
        path.lineTo(x - half, y);
        path.closePath();
        return path;
    }
}
