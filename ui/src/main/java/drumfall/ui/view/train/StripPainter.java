// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.Optional;

/** Puts ink on a strip's plan. */
final class StripPainter {
    /** Radius of the ring around what is shown enlarged, drawing units. */
    private static final double DETAIL = 7;

    private final Graphics2D graphics;
    private final Inks inks;
    private final StripPlan plan;
    private final StripFrame frame;
    private final double unit;
    private final GearPainter gears;
    private final FigurePainter figures;

    StripPainter(Graphics2D graphics, Inks inks, StripPlan plan, TabularText text) {
        this.graphics = graphics;
        this.inks = inks;
        this.plan = plan;
        this.frame = plan.frame();
        this.unit = frame.unit();
        this.gears = new GearPainter(graphics, inks, unit);
        this.figures = new FigurePainter(graphics, inks, text, unit);
    }

    /**
     * Paints the plan.
     *
     * @param focused the figure the keyboard is on, if the strip has the focus
     */
    void paint(Optional<StripSpot> focused) {
        int meshes = frame.faces().meshes().size();
        band();
        plan.spans().forEach(this::span);
        rod(new Line2D.Double(frame.drumX(), frame.axis(), frame.wheelX(0), frame.axis()), 0);
        for (int i = 0; i < meshes; i++) {
            rod(new Line2D.Double(frame.wheelX(i), frame.pinionY(i), frame.arborX(i + 1), frame.axis()), i + 1);
        }
        new DrumPainter(graphics, inks, plan).paint();
        for (int i = 0; i < meshes; i++) {
            mesh(i);
        }
        new EscapementPainter(graphics, inks, plan).paint((meshes - plan.centreArbor()) % 2 == 0);
        hands();
        plan.highlight().mesh().filter(index -> index < meshes).ifPresent(this::lookedInto);
        plan.notes().forEach(figures::note);
        plan.gauges().forEach(figures::gauge);
        plan.spots()
                .forEach(spot -> figures.paint(
                        spot, pointed(spot), focused.filter(spot::equals).isPresent()));
    }

    private boolean pointed(StripSpot spot) {
        boolean figure = spot.figure().isPresent()
                && spot.figure().equals(plan.highlight().hovered());
        return figure || spot.arbor().filter(plan::pointedAt).isPresent();
    }

    private Color arborInk(int arbor) {
        return plan.pointedAt(arbor) ? inks.role(Role.CHOSEN) : inks.line();
    }

    private void rod(Line2D axis, int arbor) {
        gears.rod(axis, arborInk(arbor));
    }

    /** The ring around the pitch point of the mesh that the sheet of the mesh shows enlarged. */
    private void lookedInto(int index) {
        double y = frame.axis() + frame.faces().meshes().get(index).wheelPitch() * frame.scale();
        graphics.setColor(inks.role(Role.CHOSEN));
        graphics.setStroke(Pens.outline(unit));
        graphics.draw(GearShape.circle(frame.wheelX(index), y, DETAIL * unit));
    }

    private void mesh(int index) {
        TrainFaces.MeshFace face = frame.faces().meshes().get(index);
        gears.wheel(frame.wheelX(index), frame.axis(), face, frame.scale(), arborInk(index));
        gears.pinion(frame.wheelX(index), frame.pinionY(index), face, frame.scale(), arborInk(index + 1));
        double radius = face.wheelTip() * frame.scale();
        if (index > 0 && radius > 12 * unit) {
            arborEnd(index, radius);
        }
    }

    /** The rod comes from the pinion in front of the wheel to its hub. */
    private void arborEnd(int arbor, double radius) {
        double dx = frame.wheelX(arbor - 1) - frame.arborX(arbor);
        double dy = frame.pinionY(arbor - 1) - frame.axis();
        double share = Math.min(1, (radius + 3 * unit) / Math.hypot(dx, dy));
        rod(
                new Line2D.Double(
                        frame.arborX(arbor) + share * dx, frame.axis() + share * dy, frame.arborX(arbor), frame.axis()),
                arbor);
        gears.hub(frame.arborX(arbor), frame.axis(), 4.5 * unit, arborInk(arbor));
    }

    private void band() {
        for (StripPlan.BandPiece piece : plan.band()) {
            boolean pointed = plan.pointedAt(piece.arbor());
            graphics.setColor(pointed ? inks.wash(Role.CHOSEN) : inks.wash());
            graphics.fill(piece.shape());
        }
        graphics.setStroke(Pens.narrow(unit));
        for (StripPlan.BandPiece piece : plan.band()) {
            graphics.setColor(plan.pointedAt(piece.arbor()) ? inks.role(Role.CHOSEN) : inks.hairline());
            graphics.draw(edges(piece.shape()));
        }
        for (int arbor = 0; arbor <= frame.faces().meshes().size(); arbor++) {
            balloon(arbor);
        }
    }

    /** The band's long edges without its ends. */
    private static Shape edges(Path2D piece) {
        double[] c = new double[6];
        double[][] corners = new double[4][];
        var walk = piece.getPathIterator(null);
        for (int i = 0; i < 4; i++, walk.next()) {
            walk.currentSegment(c);
            corners[i] = new double[] {c[0], c[1]};
        }
        Path2D edges = new Path2D.Double();
        edges.moveTo(corners[0][0], corners[0][1]);
        edges.lineTo(corners[1][0], corners[1][1]);
        edges.moveTo(corners[3][0], corners[3][1]);
        edges.lineTo(corners[2][0], corners[2][1]);
        return edges;
    }

    private void balloon(int arbor) {
        double x = frame.arborX(arbor);
        double y = frame.bandMiddle();
        Shape circle = GearShape.circle(x, y, 8 * unit);
        graphics.setColor(inks.paper());
        graphics.fill(circle);
        graphics.setColor(arborInk(arbor));
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(circle);
        figures.centred(Integer.toString(arbor + 1), x, y, 10.5 * unit);
    }

    private void span(StripPlan.Span span) {
        graphics.setColor(inks.hairline());
        graphics.setStroke(Pens.narrow(unit));
        double y = span.y();
        graphics.draw(new Line2D.Double(span.from() + unit, y, span.gap().getX(), y));
        graphics.draw(new Line2D.Double(span.gap().getY(), y, span.to() - unit, y));
        arrowhead(span.from() + unit, y, 1);
        arrowhead(span.to() - unit, y, -1);
        graphics.draw(new Line2D.Double(span.from(), y - 5 * unit, span.from(), y + 7 * unit));
        graphics.draw(new Line2D.Double(span.to(), y - 5 * unit, span.to(), y + 7 * unit));
    }

    private void arrowhead(double x, double y, double direction) {
        Path2D head = new Path2D.Double();
        head.moveTo(x, y);
        head.lineTo(x + direction * 7 * unit, y - 1.8 * unit);
        head.lineTo(x + direction * 7 * unit, y + 1.8 * unit);
        head.closePath();
        graphics.fill(head);
    }

    /** The hands stand at ten past ten on the centre arbor, with the count between them. */
    private void hands() {
        double x = frame.arborX(plan.centreArbor());
        double radius = frame.faces().meshes().get(plan.centreArbor()).wheelTip() * frame.scale();
        hand(x, 1.28 * Math.max(radius, 16 * unit), Math.toRadians(-44), 2.0 * unit);
        hand(x, 0.86 * Math.max(radius, 16 * unit), Math.toRadians(-136), 2.9 * unit);
        gears.hub(x, frame.axis(), 4.5 * unit, arborInk(plan.centreArbor()));
    }

    private void hand(double x, double length, double angle, double half) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        Path2D hand = new Path2D.Double();
        hand.moveTo(x - half * sin, frame.axis() + half * cos);
        hand.lineTo(x + length * cos, frame.axis() + length * sin);
        hand.lineTo(x + half * sin, frame.axis() - half * cos);
        hand.closePath();
        graphics.setColor(arborInk(plan.centreArbor()));
        graphics.fill(hand);
    }
}
