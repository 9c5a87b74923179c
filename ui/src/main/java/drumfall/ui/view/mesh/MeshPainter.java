// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.mesh;

import drumfall.solver.teeth.contact.Contact;
import drumfall.ui.presenter.MeshPhases.Phase;
import drumfall.ui.presenter.MeshState.Traced;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.train.Inks;
import drumfall.ui.view.train.Pens;
import drumfall.ui.view.train.Role;
import drumfall.ui.view.train.TabularText;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;

/**
 * Puts ink on the sheet of a mesh at one phase.
 *
 * @param graphics set up for fine lines
 * @param inks inks
 * @param plan where the gears stand
 * @param room what may be written on, px
 * @param text writes
 * @param unit drawing unit, px
 */
record MeshPainter(Graphics2D graphics, Inks inks, MeshPlan plan, Dimension room, TabularText text, double unit) {
    private static final double SIZE = 12;

    /** Lengths of the normal's two halves and of the force, drawing units. */
    private static final double NORMAL = 54;

    private static final double FORCE = 72;

    void paint(Traced traced, GearFace wheel, GearFace pinion, Phase phase) {
        double friction = traced.contact().friction();
        AffineTransform wheelPlace = placed(0, wheel.turned(phase.wheelAngle()));
        AffineTransform pinionPlace = placed(plan.centreDistance(), pinion.turned(Math.PI - phase.pinionAngle()));
        face(wheel, wheelPlace);
        face(pinion, pinionPlace);
        circles();
        edge(wheel, wheelPlace);
        edge(pinion, pinionPlace);
        phase.contacts().forEach(this::normal);
        phase.contacts()
                .forEach(contact -> force(contact, friction, phase.contacts().size()));
        phase.contacts().forEach(this::point);
        rotation();
        graphics.setColor(inks.lighter());
        words(Texts.of("mesh.fromdial"), 8 * unit, room.height - 8 * unit);
    }

    private AffineTransform placed(double x, AffineTransform turn) {
        AffineTransform place = plan.toSheet();
        place.translate(x, 0);
        place.concatenate(turn);
        return place;
    }

    private void face(GearFace gear, AffineTransform place) {
        graphics.setColor(inks.wash());
        graphics.fill(place.createTransformedShape(gear.body()));
    }

    private void edge(GearFace gear, AffineTransform place) {
        graphics.setColor(inks.line());
        graphics.setStroke(Pens.outline(unit));
        graphics.draw(place.createTransformedShape(gear.edge()));
    }

    /** Pitch circles, the line of centres, and the pinion's centre. */
    private void circles() {
        graphics.setColor(inks.hairline());
        graphics.setStroke(Pens.chain(unit));
        circle(0, plan.wheelRadius());
        circle(plan.centreDistance(), plan.pinionRadius());
        Point2D left = plan.onSheet(0, 0);
        Point2D right = plan.onSheet(plan.centreDistance() + plan.pinionRadius() + 2, 0);
        graphics.draw(new Line2D.Double(Math.max(-50, left.getX()), left.getY(), right.getX(), right.getY()));
        Point2D centre = plan.onSheet(plan.centreDistance(), 0);
        double reach = 8 * unit;
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(new Line2D.Double(centre.getX(), centre.getY() - reach, centre.getX(), centre.getY() + reach));
    }

    private void circle(double x, double radius) {
        graphics.draw(plan.toSheet().createTransformedShape(GearFace.circle(x, 0, radius)));
    }

    private Point2D place(Contact contact) {
        return plan.onSheet(contact.x(), contact.y());
    }

    private void normal(Contact contact) {
        Point2D at = place(contact);
        graphics.setColor(inks.line());
        graphics.setStroke(Pens.chain(unit));
        Point2D behind = plan.away(at, contact.normalX(), contact.normalY(), -NORMAL * unit);
        Point2D ahead = plan.away(at, contact.normalX(), contact.normalY(), NORMAL * unit);
        graphics.draw(new Line2D.Double(behind, ahead));
        label(Texts.of("mesh.normal"), behind, at);
    }

    /** The normal turned by the angle of friction against the sliding: (n + d s) over its length, s along the flanks. */
    private void force(Contact contact, double friction, int pairs) {
        double drag = contact.isApproach() ? -friction : friction;
        double length = Math.hypot(1, drag);
        double x = (contact.normalX() - drag * contact.normalY()) / length;
        double y = (contact.normalY() + drag * contact.normalX()) / length;
        Point2D at = place(contact);
        Point2D tip = plan.away(at, x, y, FORCE * unit / pairs);
        graphics.setColor(inks.role(Role.CHOSEN));
        graphics.setStroke(Pens.solid(2 * unit));
        graphics.draw(new Line2D.Double(at, tip));
        arrowhead(at, tip, 9 * unit);
        label(Texts.of("mesh.force"), tip, at);
    }

    private void arrowhead(Point2D from, Point2D tip, double length) {
        double angle = Math.atan2(tip.getY() - from.getY(), tip.getX() - from.getX());
        Path2D head = new Path2D.Double();
        head.moveTo(0, 0);
        head.lineTo(-length, -0.33 * length);
        head.lineTo(-length, 0.33 * length);
        head.closePath();
        AffineTransform place = AffineTransform.getTranslateInstance(tip.getX(), tip.getY());
        place.rotate(angle);
        graphics.fill(place.createTransformedShape(head));
    }

    /** Words beyond the end of a line, on paper so that they read on teeth too. */
    private void label(String words, Point2D end, Point2D start) {
        double width = text.width(words, SIZE * unit);
        boolean toTheRight = end.getX() >= start.getX();
        double x = end.getX() + (toTheRight ? 5 * unit : -5 * unit - width);
        double y = end.getY() + (end.getY() > start.getY() ? 10 : -2) * unit;
        double least = (SIZE + 2) * unit;
        words(
                words,
                Math.max(4 * unit, Math.min(room.width - width - 4 * unit, x)),
                Math.max(least, Math.min(room.height - 4 * unit, y)));
    }

    private void words(String words, double x, double y) {
        double width = text.width(words, SIZE * unit);
        Color ink = graphics.getColor();
        graphics.setColor(inks.paper());
        graphics.fill(new java.awt.geom.RoundRectangle2D.Double(
                x - 2 * unit, y - SIZE * unit, width + 4 * unit, 1.3 * SIZE * unit, 4 * unit, 4 * unit));
        graphics.setColor(ink);
        text.draw(graphics, words, x, y - 0.1 * SIZE * unit, SIZE * unit);
    }

    /** A ring before the pitch point, a disc after it. */
    private void point(Contact contact) {
        Point2D at = place(contact);
        Shape outer = GearFace.circle(at.getX(), at.getY(), 4.5 * unit);
        graphics.setColor(contact.isApproach() ? inks.paper() : inks.role(Role.CHOSEN));
        graphics.fill(outer);
        graphics.setColor(inks.role(Role.CHOSEN));
        graphics.setStroke(Pens.solid(2 * unit));
        graphics.draw(outer);
    }

    /** Which way the wheel turns: an arrow inside its rim. */
    private void rotation() {
        double radius = plan.wheelRadius() - 3.4;
        double half = Math.min(0.6, 1.6 / plan.wheelRadius());
        Path2D arc = new Path2D.Double();
        for (int i = 0; i <= 12; i++) {
            double angle = half * (i / 6.0 - 1);
            Point2D point = plan.onSheet(radius * Math.cos(angle), radius * Math.sin(angle));
            if (i == 0) {
                arc.moveTo(point.getX(), point.getY());
            } else {
                arc.lineTo(point.getX(), point.getY());
            }
        }
        graphics.setColor(inks.line());
        graphics.setStroke(Pens.outline(unit));
        graphics.draw(arc);
        double before = half * (11 / 6.0 - 1);
        arrowhead(
                plan.onSheet(radius * Math.cos(before), radius * Math.sin(before)),
                plan.onSheet(radius * Math.cos(half), radius * Math.sin(half)),
                7 * unit);
    }
}
