// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/**
 * Draws escape wheel, pallets and pendulum.
 *
 * @param graphics set up for fine lines
 * @param inks inks
 * @param plan what is drawn
 */
record EscapementPainter(Graphics2D graphics, Inks inks, StripPlan plan) {
    /** The pendulum is drawn this far out of the vertical, so that it is seen to swing. */
    private static final double SWING = Math.toRadians(6);

    void paint(boolean clockwise) {
        StripFrame frame = plan.frame();
        double unit = frame.unit();
        double radius = frame.faces().escape() * frame.scale();
        Color ink = plan.pointedAt(frame.faces().meshes().size()) ? inks.role(Role.CHOSEN) : inks.line();
        GearPainter gears = new GearPainter(graphics, inks, unit);
        pendulum();
        gears.disc(
                GearShape.escape(frame.escapeX(), frame.axis(), frame.faces().escapeTeeth(), radius, clockwise), ink);
        if (radius > 20 * unit) {
            gears.crossings(frame.escapeX(), frame.axis(), 0.7 * radius, ink);
        }
        gears.hub(frame.escapeX(), frame.axis(), 4 * unit, ink);
        pallets(radius);
    }

    private void pallets(double radius) {
        StripFrame frame = plan.frame();
        double unit = frame.unit();
        double x = frame.escapeX();
        double y = frame.anchorY();
        double reach = 0.74 * radius;
        double foot = frame.axis() - 0.70 * radius;
        Path2D anchor = new Path2D.Double();
        anchor.moveTo(x, y - 3.5 * unit);
        anchor.curveTo(
                x + 0.5 * reach, y - 2 * unit, x + reach + 2.5 * unit, y + 4 * unit, x + reach + 2.5 * unit, foot);
        anchor.lineTo(x + reach - 3 * unit, foot - 1.5 * unit);
        anchor.curveTo(x + reach - 3 * unit, y + 9 * unit, x + 0.4 * reach, y + 4 * unit, x, y + 4 * unit);
        anchor.curveTo(
                x - 0.4 * reach,
                y + 4 * unit,
                x - reach + 3 * unit,
                y + 9 * unit,
                x - reach + 3 * unit,
                foot + 1.5 * unit);
        anchor.lineTo(x - reach - 2.5 * unit, foot - unit);
        anchor.curveTo(x - reach - 2.5 * unit, y + 4 * unit, x - 0.5 * reach, y - 2 * unit, x, y - 3.5 * unit);
        anchor.closePath();
        graphics.setColor(inks.wash());
        graphics.fill(anchor);
        graphics.setColor(inks.line());
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(anchor);
        new GearPainter(graphics, inks, unit).hub(x, y, 2.8 * unit, inks.line());
    }

    private void pendulum() {
        StripFrame frame = plan.frame();
        double unit = frame.unit();
        double x = frame.pendulumX();
        double y = frame.anchorY();
        double length = frame.weightBottom() - 14 * unit - y;
        new GearPainter(graphics, inks, unit).rod(new Line2D.Double(frame.escapeX(), y, x, y), inks.line());
        arcs(x, y, length);
        Graphics2D swung = (Graphics2D) graphics.create();
        swung.transform(AffineTransform.getRotateInstance(-SWING, x, y));
        swung.setColor(inks.line());
        swung.setStroke(Pens.outline(unit));
        swung.draw(new Line2D.Double(x, y, x, y + length - 11 * unit));
        Shape bob = GearShape.circle(x, y + length, 11 * unit);
        swung.setColor(inks.wash());
        swung.fill(bob);
        swung.setColor(inks.line());
        swung.draw(bob);
        swung.setStroke(Pens.narrow(unit));
        swung.draw(GearShape.circle(x, y + length, 8.5 * unit));
        swung.draw(new Line2D.Double(x, y + length + 11 * unit, x, y + length + 14 * unit));
        swung.dispose();
        graphics.setColor(inks.line());
        graphics.fill(GearShape.circle(x, y, 2.4 * unit));
    }

    private void arcs(double x, double y, double length) {
        double unit = plan.frame().unit();
        graphics.setColor(inks.hairline());
        graphics.setStroke(Pens.chain(unit));
        graphics.draw(new Line2D.Double(x, y, x, y + length + 10 * unit));
        graphics.setStroke(Pens.narrow(unit));
        double degrees = Math.toDegrees(SWING);
        graphics.draw(new Arc2D.Double(
                x - length, y - length, 2 * length, 2 * length, 270 - degrees, 2 * degrees, Arc2D.OPEN));
    }
}
