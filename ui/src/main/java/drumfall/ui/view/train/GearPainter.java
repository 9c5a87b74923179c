// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/**
 * Draws wheels and pinions seen from the dial: teeth, pitch circle chain-dotted, rim, arms, hub and rod.
 *
 * @param graphics set up for fine lines
 * @param inks inks
 * @param unit drawing unit, px
 */
record GearPainter(Graphics2D graphics, Inks inks, double unit) {
    /** Directions of the arms: the top is left free for the count, the lower left for the arbor. */
    private static final double[] ARMS = {Math.toRadians(-28), Math.toRadians(-152), Math.toRadians(90)};

    /** Below this radius a wheel is drawn without arms, drawing units. */
    private static final double SMALLEST_WITH_ARMS = 20;

    /**
     * Draws a wheel.
     *
     * @param x centre
     * @param y centre
     * @param face counts and radii, m
     * @param scale px for a metre
     * @param ink outline
     */
    void wheel(double x, double y, TrainFaces.MeshFace face, double scale, Color ink) {
        double pitch = face.wheelPitch() * scale;
        double tip = face.wheelTip() * scale;
        disc(GearShape.toothed(x, y, face.toothCount(), pitch, tip, Math.PI / 2 + Math.PI / face.toothCount()), ink);
        double rim = pitch - Math.max(3.2 * face.module() * scale, 5 * unit);
        if (pitch > SMALLEST_WITH_ARMS * unit) {
            crossings(x, y, rim, ink);
        }
        chain(x, y, pitch);
        hub(x, y, Math.min(4.5 * unit, 0.3 * pitch), ink);
    }

    /**
     * Draws a pinion.
     *
     * @param x centre
     * @param y centre
     * @param face counts and radii, m
     * @param scale px for a metre
     * @param ink outline
     */
    void pinion(double x, double y, TrainFaces.MeshFace face, double scale, Color ink) {
        double pitch = face.pinionPitch() * scale;
        double tip = face.pinionTip() * scale;
        Path2D outline = GearShape.toothed(x, y, face.leafCount(), pitch, tip, -Math.PI / 2);
        graphics.setColor(inks.wash());
        graphics.fill(outline);
        graphics.setColor(ink);
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(outline);
        graphics.fill(GearShape.circle(x, y, Math.min(1.6 * unit, 0.4 * pitch)));
    }

    void disc(Path2D outline, Color ink) {
        graphics.setColor(inks.face());
        graphics.fill(outline);
        graphics.setColor(ink);
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(outline);
    }

    /** Openings between the arms. */
    void crossings(double x, double y, double rim, Color ink) {
        double hub = 8 * unit;
        Area openings = new Area(GearShape.circle(x, y, rim));
        openings.subtract(new Area(GearShape.circle(x, y, hub)));
        for (double arm : ARMS) {
            openings.subtract(new Area(arm(x, y, rim, arm)));
        }
        graphics.setColor(inks.paper());
        graphics.fill(openings);
        graphics.setColor(ink);
        graphics.setStroke(Pens.narrow(unit));
        graphics.draw(openings);
    }

    private Path2D arm(double x, double y, double rim, double angle) {
        double half = 2.6 * unit;
        double acrossX = -Math.sin(angle) * half;
        double acrossY = Math.cos(angle) * half;
        double endX = x + Math.cos(angle) * (rim + unit);
        double endY = y + Math.sin(angle) * (rim + unit);
        Path2D path = new Path2D.Double();
        path.moveTo(x + acrossX, y + acrossY);
        path.lineTo(endX + 0.75 * acrossX, endY + 0.75 * acrossY);
        path.lineTo(endX - 0.75 * acrossX, endY - 0.75 * acrossY);
        path.lineTo(x - acrossX, y - acrossY);
        path.closePath();
        return path;
    }

    void chain(double x, double y, double pitch) {
        graphics.setColor(inks.hairline());
        graphics.setStroke(Pens.chain(unit));
        graphics.draw(GearShape.circle(x, y, pitch));
    }

    void hub(double x, double y, double radius, Color ink) {
        graphics.setColor(inks.paper());
        graphics.fill(GearShape.circle(x, y, radius));
        graphics.setColor(ink);
        graphics.setStroke(Pens.outline(unit));
        graphics.draw(GearShape.circle(x, y, radius));
        graphics.fill(GearShape.circle(x, y, Math.min(1.5 * unit, 0.5 * radius)));
    }

    /** A rod in the length, two lines with the centre line between. */
    void rod(Line2D axis, Color ink) {
        graphics.setColor(ink);
        graphics.setStroke(Pens.solid(3.6 * unit));
        graphics.draw(axis);
        graphics.setColor(inks.paper());
        graphics.setStroke(Pens.solid(1.7 * unit));
        graphics.draw(axis);
    }
}
