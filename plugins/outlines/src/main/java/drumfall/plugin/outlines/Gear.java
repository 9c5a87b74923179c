// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.teeth.outline.GearOutline;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import drumfall.solver.teeth.outline.WheelBody;
import java.util.stream.Stream;

/**
 * A gear as it is cut: the teeth chosen for its mesh around a bore.
 *
 * @param form its teeth
 * @param module mm
 * @param thinning taken off each tooth along the pitch circle, mm
 * @param bore diameter of the hole for the arbor, mm
 * @param wall least material around the bore, mm
 */
record Gear(ToothForm form, double module, double thinning, double bore, double wall) {
    /** Largest distance between a flank and the arcs that stand for it, mm; a fortieth of a printer's line width. */
    static final double TOLERANCE = 0.01;

    private static final Point ORIGIN = new Point(0, 0);

    /** Teeth, leaves or pins. */
    int count() {
        return form.toothCount();
    }

    /** The outline around the origin, a tooth or a pin on the x axis. */
    Outline outline() {
        WheelBody body = WheelBody.solid(bore, wall);
        return form instanceof LanternPinion pins
                ? GearOutline.shroud(pins, body, module, 0)
                : GearOutline.of(form, body, new GearOutline.Drawing(module, thinning, TOLERANCE));
    }

    /** All rings of the outline but the bore, turned about the origin. */
    Stream<Ring> rings(double turn) {
        Outline outline = outline();
        return Stream.concat(
                        Stream.of(outline.outer()), outline.holes().stream().skip(1))
                .map(ring -> ring.turned(turn));
    }

    double pitchRadius() {
        return form.pitchRadius() * module;
    }

    /** Radius of everything, mm; a lantern pinion reaches to the edge of its shrouds. */
    double tipRadius() {
        return form instanceof LanternPinion
                ? outline().outer().segments().get(0).start().distance(ORIGIN)
                : form.flank().tipRadius() * module;
    }

    /** Radius at the bottom of the gaps, mm; inside the pins of a lantern pinion. */
    double rootRadius() {
        return form instanceof LanternPinion pins
                ? pitchRadius() - pins.pinDiameter() * module / 2
                : form.flank().rootRadius() * module;
    }
}
