// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;

/**
 * A ring on an arbor that keeps parts apart; with a screw through it, a pillar between plates.
 *
 * @param bore diameter of the bore as drawn, m
 * @param outer outer diameter, m
 * @param height m, at least a layer
 * @param print what the printer can do
 */
public record Spacer(double bore, double outer, double height, PrintSizes print) implements PrintedShape {
    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if the wall is too thin or there is no height
     */
    public Spacer {
        print.requireHeight("height of a spacer", height);
        SizeLimitException.atLeast("bore of a spacer", bore, print.extrusion(), "one extrusion width");
        SizeLimitException.atLeast(
                "outer diameter of a spacer", outer, bore + 2 * print.wall(), "two extrusion widths around the bore");
    }

    @Override
    public Solid solid() {
        return Solid.of(mm(height), Region.of(Rings.circle(mm(outer) / 2), Rings.hole(mm(bore) / 2)));
    }
}
