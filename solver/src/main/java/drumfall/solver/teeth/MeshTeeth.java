// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.teeth.outline.ToothStrength;
import java.util.stream.Stream;

/**
 * The teeth chosen for a wheel and the pinion it drives, and what they do; everything at module 1.
 *
 * @param pair the gears, the wheel driving
 * @param wheel figures of the wheel
 * @param pinion figures of the pinion
 * @param path figures of the path of contact
 * @param torque what passes under friction
 */
public record MeshTeeth(MeshPair pair, GearFigures wheel, GearFigures pinion, PathFigures path, MeshTorque torque) {
    /**
     * Figures of the path of contact.
     *
     * @param contactRatio average number of pairs that carry together, as drawn
     * @param approachShare share of the path before the pitch point, 0 to 1, as drawn
     * @param bindingFriction friction at which some phase binds, anywhere in the band of errors; infinite if none does
     */
    public record PathFigures(double contactRatio, double approachShare, double bindingFriction) {}

    /**
     * Efficiency over one pitch as drawn.
     *
     * @param friction coefficient of friction at the teeth, 0 to 1
     */
    public EfficiencyCurve curve(double friction) {
        return torque.curve(friction);
    }

    /**
     * The section that decides whether the teeth print: the least of both gears' {@link
     * ToothStrength#printableSection(double)}, which must be two extrusion widths; modules.
     *
     * @param extrusion width of one extrusion, modules
     * @param thinning taken off each tooth along the pitch circle, modules
     */
    public double printableSection(double extrusion, double thinning) {
        return Stream.of(pair.driver(), pair.follower())
                .mapToDouble(form -> section(form, extrusion, thinning))
                .min()
                .orElseThrow();
    }

    private static double section(ToothForm form, double extrusion, double thinning) {
        return form instanceof LanternPinion pins
                ? pins.pinDiameter()
                : new ToothStrength(form, thinning).printableSection(extrusion);
    }
}
