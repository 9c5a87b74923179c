// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.mesh;

import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.teeth.outline.Point;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.List;

/**
 * The teeth of a gear near the line of centres as a shape, modules; a tooth's centre line on the x axis.
 *
 * @param form the teeth
 * @param body what is filled: the teeth down to the centre, or the pins
 * @param edge the teeth's edge, open at both ends unless the whole gear is shown
 */
record GearFace(ToothForm form, Shape body, Shape edge) {
    /** Teeth on either side of the line of centres; the rest is out of the picture. */
    private static final int NEAR = 6;

    static GearFace of(ToothForm form, List<Point> tooth) {
        if (form instanceof LanternPinion pins) {
            return pins(pins);
        }
        int count = form.toothCount();
        boolean whole = count <= 2 * NEAR + 1;
        int first = whole ? 0 : -NEAR;
        int last = whole ? count : NEAR + 1;
        Path2D edge = new Path2D.Double();
        for (int i = first; i < last; i++) {
            add(edge, tooth, i * form.pitchAngle());
        }
        Path2D body = new Path2D.Double(edge);
        if (whole) {
            edge.closePath();
        } else {
            body.lineTo(0, 0);
        }
        body.closePath();
        return new GearFace(form, body, edge);
    }

    private static void add(Path2D path, List<Point> tooth, double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        for (Point point : tooth) {
            double x = c * point.x() - s * point.y();
            double y = s * point.x() + c * point.y();
            if (path.getCurrentPoint() == null) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
    }

    private static GearFace pins(LanternPinion pinion) {
        Area all = new Area();
        double radius = pinion.pinDiameter() / 2;
        for (int i = 0; i < pinion.leafCount(); i++) {
            double angle = i * pinion.pitchAngle();
            all.add(new Area(
                    circle(pinion.pitchRadius() * Math.cos(angle), pinion.pitchRadius() * Math.sin(angle), radius)));
        }
        return new GearFace(pinion, all, all);
    }

    static Shape circle(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    /** The same gear turned by less than half a pitch either way, which looks like any whole number of pitches more. */
    AffineTransform turned(double angle) {
        return AffineTransform.getRotateInstance(Math.IEEEremainder(angle, form.pitchAngle()));
    }
}
