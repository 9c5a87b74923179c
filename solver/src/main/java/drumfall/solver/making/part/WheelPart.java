// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import drumfall.solver.making.solid.Region;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * A wheel with hub, crossings, rim and bore.
 *
 * @param teeth its teeth
 * @param crossings what is cut out of it
 * @param thickness m, at least a layer
 * @param bore diameter of the bore as drawn, m
 * @param pins holes in the hub, for a click or for screws
 * @param print what the printer can do
 */
public record WheelPart(
        GearCut teeth, Crossings crossings, double thickness, double bore, PinCircle pins, PrintSizes print)
        implements PlateWheel {
    /**
     * Checks the sizes against each other.
     *
     * @throws drumfall.solver.making.solid.SizeLimitException if a size cannot be made
     */
    public WheelPart {
        print.requireHeight("thickness of a wheel", thickness);
        teeth.requireBore("a wheel", bore, print);
        crossings.require("a wheel of " + teeth.count(), teeth.rootRadius(), bore, print);
        pins.requireWithin("a wheel", bore / 2, crossings.solidRadius(teeth.rootRadius()), print);
    }

    @Override
    public double solidRadius() {
        return crossings.solidRadius(teeth.rootRadius());
    }

    @Override
    public Region section() {
        Outline plain = teeth.outline(crossings.body(bore, print));
        List<Ring> holes = new ArrayList<>(plain.holes());
        holes.addAll(pins.holes());
        return Region.of(new Outline(plain.outer(), holes));
    }
}
