// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import drumfall.solver.teeth.flank.ToothLimitException;
import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.teeth.form.ToothForm;
import java.util.ArrayList;
import java.util.List;

/** The whole outline of one gear: teeth, bore and, for a wheel, the windows between its arms. */
public final class GearOutline {
    private GearOutline() {}

    /**
     * How a gear is drawn.
     *
     * @param module tooth module, mm, &gt; 0
     * @param thinning taken off each tooth along the pitch circle, mm, both flanks together
     * @param tolerance greatest distance of the arcs from the true flank, mm, &gt; 0
     */
    public record Drawing(double module, double thinning, double tolerance) {
        /**
         * Checks the figures.
         *
         * @throws ToothLimitException if module or tolerance is not positive
         */
        public Drawing {
            if (!(module > 0)) {
                throw ToothLimitException.below("module", module, 0.1, "mm");
            }
            if (!(tolerance > 0)) {
                throw ToothLimitException.below("tolerance of an outline", tolerance, 1e-4, "mm");
            }
        }
    }

    /**
     * The outline of a toothed gear.
     *
     * @param form the teeth
     * @param body what lies inside them
     * @param drawing module, thinning and tolerance
     * @throws ToothLimitException if the bore reaches the root, or arms, hub and rim do not fit
     */
    public static Outline of(ToothForm form, WheelBody body, Drawing drawing) {
        return of(form, body, drawing, 0);
    }

    private static Outline of(ToothForm form, WheelBody body, Drawing drawing, double tipCut) {
        double root = form.flank().rootRadius() * drawing.module();
        double most = 2 * (root - body.wall());
        if (!(body.bore() <= most)) {
            throw ToothLimitException.above("bore of a gear of " + form.toothCount(), body.bore(), most, "mm");
        }
        Ring teeth = ToothRing.of(form, drawing.module(), drawing.thinning(), tipCut, drawing.tolerance());
        return new Outline(teeth, inside(body, root));
    }

    /**
     * The first layer, which spreads: flanks, tips, bore and windows are drawn in by the flare so that they come out at
     * size. The root circle stays, where the spread only takes clearance.
     *
     * @param form the teeth
     * @param body what lies inside them
     * @param drawing module, thinning and tolerance
     * @param flare spread of the first layer, mm, &ge; 0
     * @throws ToothLimitException if nothing would be left of a tooth or an arm
     */
    public static Outline firstLayer(ToothForm form, WheelBody body, Drawing drawing, double flare) {
        if (!(flare >= 0)) {
            throw ToothLimitException.below("flare of the first layer", flare, 0, "mm");
        }
        Drawing thinner = new Drawing(drawing.module(), drawing.thinning() + 2 * flare, drawing.tolerance());
        return of(form, body.drawnIn(flare), thinner, flare);
    }

    /**
     * One shroud of a lantern pinion: a disc with a bore and a hole for each pin.
     *
     * @param pinion the pins
     * @param body bore and wall; the wall also stands around the pins
     * @param module tooth module, mm, &gt; 0
     * @param pinAllowance added to each pin hole's diameter, mm
     * @throws ToothLimitException if the bore reaches the pin holes or these reach each other
     */
    public static Outline shroud(LanternPinion pinion, WheelBody body, double module, double pinAllowance) {
        double pitch = pinion.pitchRadius() * module;
        double hole = pinion.pinDiameter() * module / 2 + pinAllowance / 2;
        double most = 2 * (pitch - hole - body.wall());
        if (!(body.bore() <= most)) {
            throw ToothLimitException.above(
                    "bore of a lantern pinion of " + pinion.leafCount(), body.bore(), most, "mm");
        }
        double room = pitch * Math.sin(Math.PI / pinion.leafCount()) - body.wall() / 2;
        if (!(hole <= room)) {
            throw ToothLimitException.above("pin hole of a lantern pinion", 2 * hole, 2 * room, "mm");
        }
        List<Ring> holes = new ArrayList<>();
        holes.add(circleHole(new Point(0, 0), body.bore() / 2));
        for (int i = 0; i < pinion.leafCount(); i++) {
            holes.add(circleHole(Point.polar(pitch, i * pinion.pitchAngle()), hole));
        }
        return new Outline(Ring.circle(new Point(0, 0), pitch + hole + body.wall()), holes);
    }

    /**
     * The holes in a wheel: its bore, and the windows between its arms.
     *
     * @param body what lies inside its teeth
     * @param root radius of the circle its teeth stand on, mm
     * @throws ToothLimitException if arms, hub and rim do not fit
     */
    public static List<Ring> inside(WheelBody body, double root) {
        List<Ring> holes = new ArrayList<>();
        holes.add(circleHole(new Point(0, 0), body.bore() / 2));
        holes.addAll(Windows.of(body, root));
        return holes;
    }

    private static Ring circleHole(Point centre, double radius) {
        return Ring.circle(centre, radius).reversed();
    }
}
