// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;

/**
 * A wheel and the pinion on the same arbor as one part, the pinion standing on the wheel.
 *
 * @param wheel the wheel, toothed or of an escapement
 * @param leaves the pinion's leaves
 * @param length length of the pinion, m, at least a layer
 */
public record WheelWithPinion(PlateWheel wheel, GearCut leaves, double length) implements PrintedShape {
    /**
     * Checks that the pinion stands on solid ground.
     *
     * @throws SizeLimitException if the bore reaches the leaves' roots or leaves would hang over a window
     */
    public WheelWithPinion {
        new PinionPart(leaves, length, wheel.bore(), wheel.print());
        SizeLimitException.atLeast(
                "hub of a wheel under a pinion of " + leaves.count(),
                2 * wheel.solidRadius(),
                2 * leaves.tipRadius(),
                "so that no leaf hangs over a window");
    }

    @Override
    public Solid solid() {
        PinionPart pinion = new PinionPart(leaves, length, wheel.bore(), wheel.print());
        return wheel.solid().topped(Lengths.mm(length), pinion.section());
    }
}
