// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import drumfall.solver.layout.Box;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.train.Train;
import drumfall.ui.view.placed.ElevationPlan.Line;
import drumfall.ui.view.placed.ElevationPlan.Ring;
import drumfall.ui.view.train.Inks;
import drumfall.ui.view.train.Pens;
import drumfall.ui.view.train.Role;
import drumfall.ui.view.train.TabularText;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts the elevation on paper. */
final class ElevationPainter {
    private static final double FONT = 11;
    private static final double NUMBER_APART = 15;

    /** How much of the weight's path is shown under the drawing; all of it would shrink the rest. */
    private static final double PATH_SHOWN = 24;

    /** From the frame's edge to the dimensions. */
    static final double DIMENSION_APART = 20;

    /** From the frame's upper edge to the width, above the numbers of the uppermost arbors. */
    private static final double WIDTH_APART = 34;

    private final Graphics2D graphics;
    private final Inks inks;
    private final ElevationPlan plan;
    private final SheetScale scale;
    private final TabularText text;
    private final double unit;
    private final Shown shown;

    ElevationPainter(
            Graphics2D graphics,
            Inks inks,
            ElevationPlan plan,
            SheetScale scale,
            TabularText text,
            double unit,
            Shown shown) {
        this.graphics = graphics;
        this.inks = inks;
        this.plan = plan;
        this.scale = scale;
        this.text = text;
        this.unit = unit;
        this.shown = shown;
    }

    void paint() {
        frame();
        weight();
        plan.rings().stream().filter(ring -> !ring.isOn(chosen())).forEach(this::ring);
        plan.rings().stream().filter(ring -> ring.isOn(chosen())).forEach(this::ring);
        pallets();
        dialCentre();
        shown.turn().ifPresent(this::marks);
        shown.faults().forEach(fault -> clash(fault.first(), fault.second()));
        numbers();
        shown.measured().ifPresentOrElse(this::dimensions, this::overAll);
    }

    /** The arbor whose rings lie over all others, -1 for none. */
    private int chosen() {
        return shown.measured().orElse(-1);
    }

    private Shape onSheet(Rectangle2D box) {
        return new Rectangle2D.Double(
                scale.x(box.getMinX()),
                scale.y(box.getMaxY()),
                box.getWidth() * scale.scale(),
                box.getHeight() * scale.scale());
    }

    private Shape circle(double x, double y, double radius) {
        double r = radius * scale.scale();
        return new Ellipse2D.Double(scale.x(x) - r, scale.y(y) - r, 2 * r, 2 * r);
    }

    private void draw(Color ink, BasicStroke pen, Shape shape) {
        graphics.setColor(ink);
        graphics.setStroke(pen);
        graphics.draw(shape);
    }

    private void frame() {
        draw(inks.line(), Pens.outline(unit), onSheet(plan.frame()));
    }

    /** The strip in which the weight hangs, the line above it, the weight wound. */
    private void weight() {
        Rectangle2D weight = plan.weight();
        double bottom = Math.min(plan.frame().getMinY(), weight.getMinY()) - PATH_SHOWN * unit / scale.scale();
        graphics.setColor(inks.face());
        Rectangle2D path = new Rectangle2D.Double(
                weight.getX(), bottom, weight.getWidth(), Math.max(0, weight.getMaxY() - bottom));
        graphics.fill(onSheet(path));
        for (double side : new double[] {weight.getMinX(), weight.getMaxX()}) {
            draw(inks.hairline(), dashed(), line(side, weight.getMaxY(), side, bottom));
        }
        for (double fall : plan.falls()) {
            draw(inks.line(), Pens.outline(unit), line(fall, plan.fallTop(), fall, weight.getMaxY()));
        }
        graphics.setColor(inks.wash());
        graphics.fill(onSheet(weight));
        draw(inks.line(), Pens.narrow(unit), onSheet(weight));
    }

    private BasicStroke dashed() {
        float u = (float) unit;
        return new BasicStroke(
                0.8f * u, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {4 * u, 3 * u}, 0);
    }

    private Line2D line(double x, double y, double toX, double toY) {
        return new Line2D.Double(scale.x(x), scale.y(y), scale.x(toX), scale.y(toY));
    }

    private void ring(Ring ring) {
        Shape shape = circle(ring.x(), ring.y(), ring.radius());
        boolean chosen = ring.part().kind() != PartKind.PILLAR
                && shown.isChosen(ring.part().number());
        Color ink = chosen ? inks.role(Role.CHOSEN) : inks.line();
        if (ring.line() == Line.PITCH) {
            draw(chosen ? ink : inks.hairline(), Pens.chain(unit), shape);
            return;
        }
        switch (ring.part().kind()) {
            case ROD -> {
                graphics.setColor(inks.paper());
                graphics.fill(shape);
                draw(ink, Pens.outline(unit), shape);
            }
            case PILLAR -> {
                graphics.setColor(inks.wash());
                graphics.fill(shape);
                draw(ink, Pens.outline(unit), shape);
            }
            case PALLETS -> draw(chosen ? ink : inks.hairline(), dashed(), shape);
            case HUB -> draw(chosen ? ink : inks.hairline(), Pens.narrow(unit), shape);
            default -> draw(ink, chosen ? Pens.outline(unit) : Pens.narrow(unit), shape);
        }
    }

    /** Arms from the pallet arbor to where the reach of the pallets crosses the tips of the escape wheel. */
    private void pallets() {
        int pallet = shown.seen().layout().need().parts().palletArbor();
        Point2D over = plan.arbors().get(pallet);
        Point2D wheel = plan.arbors().get(pallet - 1);
        double reach =
                plan.outline(new Part(PartKind.PALLETS, pallet)).orElseThrow().radius();
        double tip = plan.outline(new Part(PartKind.ESCAPE_WHEEL, pallet - 1))
                .orElseThrow()
                .radius();
        double apart = over.distance(wheel);
        double cosine = (apart * apart + reach * reach - tip * tip) / (2 * apart * reach);
        double half = Math.acos(Math.max(-1, Math.min(1, cosine)));
        double down = Math.atan2(wheel.getY() - over.getY(), wheel.getX() - over.getX());
        Color ink = shown.isChosen(pallet) ? inks.role(Role.CHOSEN) : inks.line();
        for (double angle : new double[] {down - half, down + half}) {
            Line2D arm = line(
                    over.getX(),
                    over.getY(),
                    over.getX() + reach * Math.cos(angle),
                    over.getY() + reach * Math.sin(angle));
            draw(ink, Pens.outline(unit), arm);
        }
    }

    private void dialCentre() {
        double reach = 9 * unit / scale.scale();
        draw(inks.line(), Pens.narrow(unit), line(-reach, 0, reach, 0));
        draw(inks.line(), Pens.narrow(unit), line(0, -reach, 0, reach));
    }

    /** A spoke on every wheel and pinion, turned as the train turns. */
    private void marks(double turns) {
        Train train = shown.seen().train();
        int centre = train.meshesAbove();
        for (Ring ring : plan.rings()) {
            int arbor = ring.part().number();
            if (ring.line() == Line.SOLID && turns(ring.part().kind())) {
                double angle = turned(train, centre, arbor, turns);
                boolean wheel = ring.part().kind() != PartKind.PINION;
                double from = wheel ? 0.2 : 0;
                Path2D spoke = new Path2D.Double();
                double cos = Math.cos(angle);
                double sin = Math.sin(angle);
                spoke.append(
                        line(
                                ring.x() + from * ring.radius() * cos,
                                ring.y() + from * ring.radius() * sin,
                                ring.x() + ring.radius() * cos,
                                ring.y() + ring.radius() * sin),
                        false);
                draw(inks.role(Role.COMPARED), Pens.outline(unit), spoke);
                graphics.fill(dot(ring.x() + ring.radius() * cos, ring.y() + ring.radius() * sin, 3 * unit));
            }
        }
    }

    private static boolean turns(PartKind kind) {
        return kind == PartKind.WHEEL || kind == PartKind.PINION || kind == PartKind.ESCAPE_WHEEL;
    }

    /** The angle of an arbor's spoke, rad anticlockwise; upright at the start. */
    static double turned(Train train, int centre, int arbor, double turns) {
        double share = train.hoursPerTurn(centre) / train.hoursPerTurn(arbor);
        double way = train.going().clockwise(arbor) ? -1 : 1;
        return Math.PI / 2 + way * 2 * Math.PI * turns * share;
    }

    private Shape dot(double x, double y, double radius) {
        return new Ellipse2D.Double(scale.x(x) - radius, scale.y(y) - radius, 2 * radius, 2 * radius);
    }

    /** Two parts too close: both drawn thick and dashed, and a cross where they meet. */
    private void clash(Part first, Optional<Part> second) {
        List<Ring> rings = new ArrayList<>();
        plan.outline(first).ifPresent(rings::add);
        second.flatMap(plan::outline).ifPresent(rings::add);
        float u = (float) unit;
        BasicStroke pen = new BasicStroke(
                2.6f * u, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {7 * u, 4 * u}, 0);
        rings.forEach(ring -> draw(inks.role(Role.MISSED), pen, circle(ring.x(), ring.y(), ring.radius())));
        if (rings.size() == 2) {
            Ring one = rings.get(0);
            Ring other = rings.get(1);
            double apart = Math.max(1e-9, Math.hypot(other.x() - one.x(), other.y() - one.y()));
            double share = (one.radius() + apart - other.radius()) / 2 / apart;
            cross(one.x() + share * (other.x() - one.x()), one.y() + share * (other.y() - one.y()));
        }
    }

    private void cross(double x, double y) {
        double arm = 6 * unit;
        double px = scale.x(x);
        double py = scale.y(y);
        draw(inks.role(Role.MISSED), Pens.solid(2.4 * unit), new Line2D.Double(px - arm, py - arm, px + arm, py + arm));
        graphics.draw(new Line2D.Double(px - arm, py + arm, px + arm, py - arm));
    }

    private void numbers() {
        List<Point2D> arbors = plan.arbors().stream()
                .map(at -> (Point2D) new Point2D.Double(scale.x(at.getX()), scale.y(at.getY())))
                .toList();
        List<Point2D> places = NumberPlaces.of(arbors, NUMBER_APART * unit);
        for (int arbor = 0; arbor < places.size(); arbor++) {
            number(arbor, places.get(arbor));
        }
    }

    private void number(int arbor, Point2D at) {
        String mark = shown.words().mark(arbor);
        double radius = 7.5 * unit;
        Shape ring = new Ellipse2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius);
        boolean chosen = shown.isChosen(arbor);
        graphics.setColor(chosen ? inks.role(Role.CHOSEN) : inks.paper());
        graphics.fill(ring);
        if (!chosen) {
            draw(inks.lighter(), Pens.narrow(unit), ring);
        }
        graphics.setColor(chosen ? inks.paper() : inks.line());
        double size = FONT * unit;
        text.draw(graphics, mark, at.getX() - text.width(mark, size) / 2, at.getY() + size * 0.36, size);
    }

    /** Width and height of the parts, from those that reach furthest. */
    private void overAll() {
        Box parts = shown.seen().layout().size().parts();
        Rectangle2D frame = plan.frame();
        Ruler ruler = new Ruler(graphics, inks, text, unit);
        double left = scale.x(ElevationPlan.millimetres(parts.left()));
        double right = scale.x(ElevationPlan.millimetres(parts.right()));
        double bottom = scale.y(ElevationPlan.millimetres(parts.bottom()));
        double top = scale.y(ElevationPlan.millimetres(parts.top()));
        ruler.across(
                left,
                right,
                scale.y(frame.getMaxY()) - WIDTH_APART * unit,
                scale.y(plan.heightAt(parts.left())),
                scale.y(plan.heightAt(parts.right())),
                shown.words().length(parts.width()));
        ruler.up(
                bottom,
                top,
                scale.x(frame.getMaxX()) + DIMENSION_APART * unit,
                scale.x(plan.acrossAt(parts.bottom())),
                scale.x(plan.acrossAt(parts.top())),
                shown.words().length(parts.height()));
    }

    /** From the dial centre to an arbor: across over the frame, up beside it. */
    private void dimensions(int arbor) {
        Place place = shown.seen().layout().place(arbor);
        Point2D at = plan.arbors().get(arbor);
        Rectangle2D frame = plan.frame();
        Ruler ruler = new Ruler(graphics, inks, text, unit);
        double above = scale.y(frame.getMaxY()) - DIMENSION_APART * unit;
        double beside = scale.x(frame.getMaxX()) + DIMENSION_APART * unit;
        if (place.x() != 0) {
            ruler.across(
                    scale.x(0),
                    scale.x(at.getX()),
                    above,
                    scale.y(0),
                    scale.y(at.getY()),
                    shown.words().length(place.x()));
        }
        if (place.y() != 0) {
            ruler.up(
                    scale.y(0),
                    scale.y(at.getY()),
                    beside,
                    scale.x(0),
                    scale.x(at.getX()),
                    shown.words().length(place.y()));
        }
    }
}
