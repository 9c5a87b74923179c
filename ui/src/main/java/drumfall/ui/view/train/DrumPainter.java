// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/**
 * Draws the drum with its line, the pulley if there is one, and the weight.
 *
 * @param graphics set up for fine lines
 * @param inks inks
 * @param plan what is drawn
 */
record DrumPainter(Graphics2D graphics, Inks inks, StripPlan plan) {
    void paint() {
        StripFrame frame = plan.frame();
        double drum = frame.faces().drum() * frame.scale();
        double lineX = frame.lineX(plan.lineOnTheRight());
        double backX = frame.backX(plan.lineOnTheRight());
        double weightX = frame.weightX(plan.lineOnTheRight(), plan.falls());
        drum(frame.drumX(), frame.axis(), drum, frame.faces().flange() * frame.scale());
        if (plan.falls() == 2) {
            doubleLine(lineX, backX, weightX);
        } else {
            line(lineX, frame.axis(), frame.weightTop() - 7 * frame.unit());
        }
        weight(weightX);
    }

    private void drum(double x, double y, double drum, double flange) {
        double unit = plan.frame().unit();
        graphics.setColor(inks.face());
        graphics.fill(GearShape.circle(x, y, flange));
        graphics.setColor(plan.pointedAt(0) ? inks.role(Role.CHOSEN) : inks.line());
        graphics.setStroke(Pens.outline(unit));
        graphics.draw(GearShape.circle(x, y, flange));
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(GearShape.circle(x, y, drum));
        centreLines(x, y, flange + 3 * unit);
        new GearPainter(graphics, inks, unit).hub(x, y, 4 * unit, inks.line());
    }

    private void centreLines(double x, double y, double reach) {
        graphics.setColor(inks.hairline());
        graphics.setStroke(Pens.chain(plan.frame().unit()));
        graphics.draw(new Line2D.Double(x - reach, y, x + reach, y));
        graphics.draw(new Line2D.Double(x, y - reach, x, y + reach));
    }

    private void line(double x, double from, double to) {
        graphics.setColor(inks.line());
        graphics.setStroke(Pens.outline(plan.frame().unit()));
        graphics.draw(new Line2D.Double(x, from, x, to));
    }

    /** The line passes the pulley at the weight and comes up again to a fixed point beside the drum. */
    private void doubleLine(double lineX, double backX, double weightX) {
        StripFrame frame = plan.frame();
        double unit = frame.unit();
        double pulleyY = frame.weightTop() - frame.pulley() - 5 * unit;
        double fixedY = frame.axis() + frame.faces().flange() * frame.scale() + 9 * unit;
        line(lineX, frame.axis(), pulleyY);
        line(backX, fixedY, pulleyY);
        fixedPoint(backX, fixedY);
        Shape pulley = GearShape.circle(weightX, pulleyY, frame.pulley());
        graphics.setColor(inks.paper());
        graphics.fill(pulley);
        graphics.setColor(inks.line());
        graphics.setStroke(Pens.outline(unit));
        graphics.draw(pulley);
        graphics.draw(GearShape.circle(weightX, pulleyY, 2 * unit));
        graphics.draw(new Line2D.Double(weightX, pulleyY + 2 * unit, weightX, frame.weightTop()));
    }

    private void fixedPoint(double x, double y) {
        double unit = plan.frame().unit();
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(new Line2D.Double(x - 6 * unit, y, x + 6 * unit, y));
        for (double across = -5; across <= 5; across += 3.3) {
            graphics.draw(new Line2D.Double(x + across * unit, y, x + (across + 3) * unit, y - 3.5 * unit));
        }
    }

    private void weight(double x) {
        StripFrame frame = plan.frame();
        double unit = frame.unit();
        double top = frame.weightTop();
        double bottom = frame.weightBottom();
        double half = frame.weightHalf();
        double round = 5 * unit;
        Path2D body = new Path2D.Double();
        body.moveTo(x - half, top + round);
        body.quadTo(x - half, top, x - half + round, top);
        body.lineTo(x + half - round, top);
        body.quadTo(x + half, top, x + half, top + round);
        body.lineTo(x + half, bottom - 2 * unit);
        body.quadTo(x, bottom + 2.5 * unit, x - half, bottom - 2 * unit);
        body.closePath();
        graphics.setColor(inks.wash());
        graphics.fill(body);
        graphics.setColor(inks.line());
        graphics.setStroke(Pens.outline(unit));
        graphics.draw(body);
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(new Line2D.Double(x - half, top + round + unit, x + half, top + round + unit));
        if (plan.falls() == 1) {
            graphics.draw(new Arc2D.Double(x - 3.5 * unit, top - 7 * unit, 7 * unit, 7 * unit, 0, 360, Arc2D.OPEN));
        }
    }
}
