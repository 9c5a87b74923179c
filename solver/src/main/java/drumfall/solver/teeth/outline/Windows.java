// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import drumfall.solver.teeth.flank.ToothLimitException;
import java.util.ArrayList;
import java.util.List;

/** The openings between the arms of a wheel, clockwise, with round corners tangent to arm, rim and hub. */
final class Windows {
    private Windows() {}

    /** The windows of a body whose teeth stand on a root circle of a radius in mm. */
    static List<Ring> of(WheelBody body, double rootRadius) {
        if (body.arms() == 0) {
            return List.of();
        }
        double rimRadius = rootRadius - body.rim();
        check(body, rimRadius);
        Ring first = window(body, rimRadius).reversed();
        List<Ring> windows = new ArrayList<>();
        for (int i = 0; i < body.arms(); i++) {
            windows.add(first.turned(2 * Math.PI * i / body.arms()));
        }
        return windows;
    }

    private static void check(WheelBody body, double rimRadius) {
        double off = body.armWidth() / 2 + body.corner();
        double half = Math.sin(Math.PI / body.arms());
        if (!(body.armWidth() > 0)) {
            throw ToothLimitException.below("armWidth of a wheel", body.armWidth(), 0.1, "mm");
        }
        double hubRadius = body.hub() / 2;
        if (!(hubRadius + body.corner() >= off / half)) {
            throw ToothLimitException.below("hub of a wheel", body.hub(), 2 * (off / half - body.corner()), "mm");
        }
        double most = rimRadius - 2 * body.corner();
        if (!(hubRadius <= most)) {
            double rim = rimRadius + body.rim() - hubRadius - 2 * body.corner();
            throw ToothLimitException.above("rim of a wheel", body.rim(), rim, "mm");
        }
    }

    /** The window after the arm on the x axis, anticlockwise. */
    private static Ring window(WheelBody body, double rimRadius) {
        double f = body.corner();
        double half = body.armWidth() / 2;
        double off = half + f;
        double hubRadius = body.hub() / 2;
        double inner = Math.sqrt((hubRadius + f) * (hubRadius + f) - off * off);
        double outer = Math.sqrt((rimRadius - f) * (rimRadius - f) - off * off);
        Point innerCentre = new Point(inner, off);
        Point outerCentre = new Point(outer, off);
        Point onHub = Point.polar(hubRadius, Math.atan2(off, inner));
        Point onRim = Point.polar(rimRadius, Math.atan2(off, outer));
        Point lowArm = new Point(inner, half);
        Point highArm = new Point(outer, half);
        double pitch = 2 * Math.PI / body.arms();
        double rimAngle = Math.atan2(off, outer);
        double hubAngle = Math.atan2(off, inner);
        List<OutlineSegment> near = List.of(
                ArcSegment.between(onHub, lowArm, innerCentre, true),
                new LineSegment(lowArm, highArm),
                ArcSegment.between(highArm, onRim, outerCentre, true));
        List<OutlineSegment> ring = new ArrayList<>(near);
        ring.add(ArcSegment.about(rimRadius, rimAngle, pitch - rimAngle));
        for (int i = near.size() - 1; i >= 0; i--) {
            ring.add(near.get(i).mirrored().reversed().turned(pitch));
        }
        ring.add(ArcSegment.about(hubRadius, pitch - hubAngle, hubAngle));
        return new Ring(ring);
    }
}
