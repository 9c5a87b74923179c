// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

import drumfall.solver.teeth.choice.CycloidalFreedom;
import drumfall.solver.teeth.choice.InvoluteFreedom;
import drumfall.solver.teeth.choice.LanternFreedom;
import drumfall.solver.teeth.choice.Range;
import java.util.List;
import java.util.Optional;

/**
 * What is fixed of the shape of teeth, in modules; the rest is chosen for each mesh.
 *
 * @param pinionShift profile shift of an involute pinion; the wheel has the opposite one
 * @param wheelAddendum height of an involute wheel's tips above the pitch circle
 * @param pinionAddendum height of the tips of an involute or cycloidal pinion above the pitch circle
 * @param practicalAddendum part of the theoretical addendum of a cycloidal wheel that is in use
 * @param wheelThickness tooth of a cycloidal wheel along the pitch circle
 * @param leafThickness leaf of a cycloidal pinion along the pitch circle
 * @param pinDiameter diameter of a lantern pinion's pins
 */
public record FixedShape(
        Optional<Double> pinionShift,
        Optional<Double> wheelAddendum,
        Optional<Double> pinionAddendum,
        Optional<Double> practicalAddendum,
        Optional<Double> wheelThickness,
        Optional<Double> leafThickness,
        Optional<Double> pinDiameter) {
    /** Everything is chosen. */
    public static final FixedShape NOTHING = new FixedShape(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    /** What is left of an involute pair; shifts that cancel keep the standard centre distance. */
    InvoluteFreedom involute(Optional<Double> pressureAngle) {
        InvoluteFreedom free = InvoluteFreedom.FREE;
        return new InvoluteFreedom(
                pressureAngle.map(List::of).orElse(free.pressureAngles()),
                left(pinionShift, free.followerShift()),
                Range.fixed(0),
                left(wheelAddendum, free.driverAddendum()),
                left(pinionAddendum, free.followerAddendum()));
    }

    /** What is left of a cycloidal pair. */
    CycloidalFreedom cycloidal() {
        CycloidalFreedom free = CycloidalFreedom.FREE;
        return new CycloidalFreedom(
                free.wheelTops(),
                left(pinionAddendum, free.leafAddendum()),
                left(practicalAddendum, free.practical()),
                left(leafThickness, free.leafThickness()),
                left(wheelThickness, free.toothThickness()));
    }

    /** What is left of a lantern pair. */
    LanternFreedom lantern() {
        LanternFreedom free = LanternFreedom.FREE;
        return new LanternFreedom(left(pinDiameter, free.pinDiameter()), free.contactRatio());
    }

    private static Range left(Optional<Double> fixed, Range free) {
        return fixed.map(Range::fixed).orElse(free);
    }
}
