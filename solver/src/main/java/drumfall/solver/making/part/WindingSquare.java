// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;

/**
 * The square on the drum's arbor that the key takes hold of, with a round collar below it.
 *
 * @param side across the flats, m
 * @param length of the square, m
 * @param collar height of the collar, m
 * @param bore diameter of the bore as drawn, m
 * @param print what the printer can do
 */
public record WindingSquare(double side, double length, double collar, double bore, PrintSizes print)
        implements PrintedShape {
    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public WindingSquare {
        print.requireHeight("length of a winding square", length);
        print.requireHeight("collar of a winding square", collar);
        print.requireWall("bore of a winding square", bore);
        SizeLimitException.atLeast(
                "side of a winding square", side, bore + 2 * print.wall(), "two extrusion widths around the bore");
    }

    @Override
    public Solid solid() {
        // The collar stands out a wall beyond the square's corners, so that the key comes to rest on it.
        double round = mm(side / Math.sqrt(2) + print.wall());
        return Solid.of(mm(collar), Region.of(Rings.circle(round), Rings.hole(mm(bore) / 2)))
                .topped(mm(length), Region.of(Rings.rectangle(mm(side), mm(side)), Rings.hole(mm(bore) / 2)));
    }
}
