// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.ui.view.train.DrawingPlan.Disc;
import drumfall.ui.view.train.DrawingPlan.Part;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;

/**
 * Puts ink on a drawing's plan: pitch circles chain-dotted, tips solid.
 *
 * @param graphics set up for fine lines
 * @param inks inks
 * @param plan what is drawn
 * @param text draws digits in equal cells
 * @param unit drawing unit, px
 */
record DrawingPainter(Graphics2D graphics, Inks inks, DrawingPlan plan, TabularText text, double unit) {
    private static final double SIZE = 12;

    /** Radius of the ring around what is shown enlarged, drawing units. */
    static final double DETAIL = 9;

    void paint() {
        plan.pointed().ifPresent(this::wash);
        centreLines();
        plan.discs().stream()
                .sorted(Comparator.comparingDouble(Disc::outer).reversed())
                .forEach(this::disc);
        for (int arbor = 0; arbor < plan.arbors().size(); arbor++) {
            arbor(arbor);
        }
        plan.mesh().ifPresent(this::lookedInto);
        plan.distances().forEach(this::distance);
        plan.balloons().forEach(this::balloon);
        bar();
        FigurePainter figures = new FigurePainter(graphics, inks, text, unit);
        plan.notes().forEach(figures::note);
    }

    private boolean pointedAt(int arbor) {
        return plan.pointed().filter(pointed -> pointed == arbor).isPresent();
    }

    private Color ink(int arbor) {
        return pointedAt(arbor) ? inks.role(Role.CHOSEN) : inks.line();
    }

    /** The ring around what the sheet of the mesh shows enlarged. */
    private void lookedInto(int mesh) {
        Point2D point = plan.pitchPoint(mesh);
        graphics.setColor(inks.role(Role.CHOSEN));
        graphics.setStroke(Pens.outline(unit));
        graphics.draw(GearShape.circle(point.getX(), point.getY(), DETAIL * unit));
    }

    private void wash(int arbor) {
        graphics.setColor(inks.wash(Role.CHOSEN));
        plan.discs().stream()
                .filter(disc -> disc.arbor() == arbor)
                .forEach(disc -> graphics.fill(
                        GearShape.circle(disc.centre().getX(), disc.centre().getY(), disc.outer())));
    }

    private void disc(Disc disc) {
        double x = disc.centre().getX();
        double y = disc.centre().getY();
        graphics.setColor(ink(disc.arbor()));
        graphics.setStroke(pointedAt(disc.arbor()) ? Pens.solid(2 * unit) : Pens.outline(unit));
        if (disc.part() == Part.ESCAPE) {
            graphics.draw(GearShape.escape(x, y, disc.count(), disc.outer(), true));
            return;
        }
        graphics.draw(GearShape.circle(x, y, disc.outer()));
        graphics.setStroke(disc.part() == Part.DRUM ? Pens.narrow(unit) : Pens.chain(unit));
        graphics.draw(GearShape.circle(x, y, disc.inner()));
    }

    private void arbor(int arbor) {
        Point2D place = plan.arbors().get(arbor);
        graphics.setColor(ink(arbor));
        graphics.fill(GearShape.circle(place.getX(), place.getY(), 2.2 * unit));
        double reach = 9 * unit;
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(new Line2D.Double(place.getX() - reach, place.getY(), place.getX() + reach, place.getY()));
        graphics.draw(new Line2D.Double(place.getX(), place.getY() - reach, place.getX(), place.getY() + reach));
    }

    private void centreLines() {
        graphics.setColor(inks.hairline());
        graphics.setStroke(Pens.chain(unit));
        for (int i = 1; i < plan.arbors().size(); i++) {
            graphics.draw(
                    new Line2D.Double(plan.arbors().get(i - 1), plan.arbors().get(i)));
        }
    }

    private void balloon(DrawingPlan.Balloon balloon) {
        double x = balloon.centre().getX();
        double y = balloon.centre().getY();
        graphics.setColor(inks.hairline());
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(new Line2D.Double(
                x, y + balloon.radius(), balloon.foot().getX(), balloon.foot().getY() - 10 * unit));
        graphics.setColor(inks.paper());
        graphics.fill(GearShape.circle(x, y, balloon.radius()));
        graphics.setColor(ink(balloon.arbor()));
        graphics.setStroke(Pens.outline(unit));
        graphics.draw(GearShape.circle(x, y, balloon.radius()));
        String number = TrainText.of("arbor", balloon.arbor() + 1);
        text.draw(graphics, number, x - text.width(number, SIZE * unit) / 2, y + 0.36 * SIZE * unit, SIZE * unit);
    }

    private void distance(DrawingPlan.Distance distance) {
        graphics.setColor(inks.hairline());
        graphics.setStroke(Pens.narrow(unit));
        if (distance.lined()) {
            dimensionLine(distance);
        } else {
            graphics.setColor(inks.paper());
            graphics.fill(distance.box());
        }
        Rectangle2D box = distance.box();
        new FigurePainter(graphics, inks, text, unit)
                .figure(
                        distance.text(),
                        box.getX() + 3 * unit,
                        box.getCenterY() + 0.36 * SIZE * unit,
                        SIZE * unit,
                        inks.line());
    }

    private void dimensionLine(DrawingPlan.Distance distance) {
        double y = distance.line();
        double from = distance.from().getX();
        double to = distance.to().getX();
        graphics.draw(new Line2D.Double(from, distance.from().getY() + 11 * unit, from, y + 4 * unit));
        graphics.draw(new Line2D.Double(to, distance.to().getY() + 11 * unit, to, y + 4 * unit));
        graphics.draw(new Line2D.Double(from, y, Math.max(from, distance.box().getMinX()), y));
        graphics.draw(new Line2D.Double(Math.min(to, distance.box().getMaxX()), y, to, y));
        arrowhead(from, y, 1);
        arrowhead(to, y, -1);
    }

    private void arrowhead(double x, double y, double direction) {
        Path2D head = new Path2D.Double();
        head.moveTo(0, 0);
        head.lineTo(7, -1.8);
        head.lineTo(7, 1.8);
        head.closePath();
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.scale(direction * unit, unit);
        graphics.fill(place.createTransformedShape(head));
    }

    private void bar() {
        Rectangle2D box = plan.bar().box();
        double quarter = box.getWidth() / 4;
        graphics.setColor(inks.line());
        for (int i = 0; i < 4; i += 2) {
            graphics.fill(new Rectangle2D.Double(box.getX() + i * quarter, box.getY(), quarter, box.getHeight()));
        }
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(box);
        new FigurePainter(graphics, inks, text, unit)
                .figure(
                        plan.bar().text(),
                        box.getMaxX() + 8 * unit,
                        box.getMaxY() + 1.5 * unit,
                        SIZE * unit,
                        inks.line());
    }
}
