// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

import drumfall.solver.teeth.outline.ArcSegment;
import drumfall.solver.teeth.outline.LineSegment;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.List;

/**
 * How what stands on the drum's arbor besides the great wheel resists being turned: second moments over the length, m⁵.
 *
 * @param form the drum
 */
record DrumTurn(DrumForm form) {
    private static final double MILLIMETRES = 1e3;

    /** Drum with both flanges, ratchet with boss and click, square with collar. */
    double polar(double diameter) {
        return barrel(diameter) + ratchet(diameter) + square();
    }

    private double barrel(double diameter) {
        double outer = diameter / 2;
        double bore = form.bore() / 2;
        double pins = pins(diameter);
        double flanges = 2 * form.wall() * ring(form.flangeRadius(diameter), bore) - form.wall() * pins;
        if (!form.ratchet(diameter).hollow()) {
            return flanges + form.length() * (ring(outer, bore) - pins);
        }
        double chamber = outer - form.wall();
        double hub = bore + form.wall();
        double spigot = chamber - DrumForm.PLAY;
        return flanges
                + form.length() * (ring(outer, chamber) + ring(hub, bore))
                + Math.min(form.wall(), form.length())
                        * ring(spigot, Math.max(spigot - form.wall(), hub + DrumForm.PLAY));
    }

    private double ratchet(double diameter) {
        RatchetForm ratchet = form.ratchet(diameter);
        double thickness = form.ratchet().thickness();
        double hole = ring(form.bore() / 2, 0) + pins(diameter);
        return thickness * (saw(ratchet) - hole)
                + (form.room() - thickness) * (ring(form.bossRadius(diameter), 0) - hole)
                + thickness * click(ratchet);
    }

    /** A triangle with a corner on the axis has a sixth of its area times the squares and the product of its two sides. */
    private static double saw(RatchetForm form) {
        int teeth = form.size().teeth();
        double root = form.rootRadius();
        double tip = form.tipRadius();
        double share = 2 * Math.PI / teeth;
        double triangle = root * tip * Math.sin(share) / 2;
        return teeth * triangle / 6 * (root * root + tip * tip + root * tip * Math.cos(share));
    }

    /** Two circles with the lines that touch both, beside the axis where the click rests, the pivot's hole taken out. */
    private double click(RatchetForm ratchet) {
        double reach = ratchet.contactRadius();
        double pivot = ratchet.clickPivot(form.gap());
        double arm = Math.sqrt(pivot * pivot - reach * reach);
        double large = ratchet.clickBoss() / 2;
        double small = ratchet.nose() / 2;
        double touch = Math.acos((large - small) / arm);
        Point eye = millimetres(reach, arm);
        Point nose = millimetres(reach, 0);
        double down = -Math.PI / 2;
        Point a = on(eye, large, down + touch);
        Point b = on(eye, large, down - touch);
        Point c = on(nose, small, down - touch);
        Point d = on(nose, small, down + touch);
        double band = new Ring(List.of(
                        new ArcSegment(a, b, eye, 2 * Math.PI - 2 * touch),
                        new LineSegment(b, c),
                        new ArcSegment(c, d, nose, 2 * touch),
                        new LineSegment(d, a)))
                .moments()
                .polar();
        double pin = form.ratchet().pin() / 2;
        return band / PartInertia.fourth(MILLIMETRES) - ring(pin, 0) - Math.PI * pin * pin * pivot * pivot;
    }

    private static Point millimetres(double x, double y) {
        return new Point(MILLIMETRES * x, MILLIMETRES * y);
    }

    private static Point on(Point centre, double radius, double angle) {
        Point from = Point.polar(MILLIMETRES * radius, angle);
        return new Point(centre.x() + from.x(), centre.y() + from.y());
    }

    private double square() {
        SquareSize square = form.square();
        double side = square.side(form.bore());
        double hole = ring(form.bore() / 2, 0);
        return square.collar() * (ring(square.collarRadius(form.bore(), form.printWall()), 0) - hole)
                + square.length() * (PartInertia.fourth(side) / 6 - hole);
    }

    private double pins(double diameter) {
        double pin = form.ratchet().pin() / 2;
        double circle = form.ratchet(diameter).pinRadius();
        return DrumForm.PINS * (ring(pin, 0) + Math.PI * pin * pin * circle * circle);
    }

    private static double ring(double outer, double inner) {
        return Math.PI / 2 * (PartInertia.fourth(outer) - PartInertia.fourth(inner));
    }
}
