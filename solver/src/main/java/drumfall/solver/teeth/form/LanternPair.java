// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import drumfall.solver.teeth.flank.ToothLimitException;

/**
 * A wheel and the lantern pinion it drives, on the sum of their pitch radii.
 *
 * @param wheel the wheel
 * @param pinion the pinion
 */
public record LanternPair(LanternWheel wheel, LanternPinion pinion) {
    private static final double CLEARANCE = 0.3;

    /**
     * Checks that both are made for the same pins.
     *
     * @throws IllegalArgumentException if count or diameter of the pins differ
     */
    public LanternPair {
        if (wheel.leafCount() != pinion.leafCount() || wheel.pinDiameter() != pinion.pinDiameter()) {
            throw new IllegalArgumentException("The pins (" + pinion
                    + ") of the pinion must be those its wheel is rolled for. Maybe roll another wheel.");
        }
    }

    /**
     * A pair whose teeth are high enough for a contact ratio; the root clears the pins by 0.3 modules.
     *
     * @param toothCount teeth of the wheel
     * @param leafCount pins of the pinion
     * @param pinDiameter diameter of a pin, modules
     * @param contactRatio pitches of action wanted, at least 1
     * @param fillet radius at the wheel's root, modules
     * @throws ToothLimitException if the tooth is pointed before that, or there are too few pins
     */
    public static LanternPair of(
            int toothCount, int leafCount, double pinDiameter, double contactRatio, double fillet) {
        LanternPinion pinion = new LanternPinion(leafCount, pinDiameter);
        double addendum = LanternWheel.addendumFor(toothCount, leafCount, pinDiameter, contactRatio);
        double depth = pinDiameter / 2 + CLEARANCE;
        return new LanternPair(new LanternWheel(toothCount, leafCount, pinDiameter, addendum, depth, fillet), pinion);
    }

    /** The pair as any two flanks in mesh, the wheel driving. */
    public MeshPair mesh() {
        return new MeshPair(wheel, pinion, wheel.pitchRadius() + pinion.pitchRadius());
    }
}
