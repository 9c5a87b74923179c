// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.outline.Point;

/**
 * The key: a bar to hold and a socket for the winding square.
 *
 * @param square across the flats of the square, m; the socket is larger by the fit all round
 * @param depth of the socket, m
 * @param handle length of the bar over its ends, m
 * @param width of the bar's ends, m
 * @param thickness of the bar, m
 * @param print what the printer can do
 */
public record WindingKey(double square, double depth, double handle, double width, double thickness, PrintSizes print)
        implements PrintedShape {
    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public WindingKey {
        print.requireWall("square of a key", square);
        print.requireHeight("socket depth of a key", depth);
        print.requireHeight("thickness of a key", thickness);
        double least = 2 * socketRadius(square, print);
        SizeLimitException.atLeast("width of a key", width, least, "the socket's own width");
        SizeLimitException.atLeast("handle of a key", handle, 2 * width, "so that there is something to hold");
    }

    private static double socketRadius(double square, PrintSizes print) {
        return (square + 2 * print.fit()) / Math.sqrt(2) + 2 * print.wall();
    }

    @Override
    public Solid solid() {
        double reach = mm(handle - width) / 2;
        double side = mm(square + 2 * print.fit());
        return Solid.of(
                        mm(thickness),
                        Region.of(Rings.band(new Point(-reach, 0), mm(width) / 2, new Point(reach, 0), mm(width) / 2)))
                .topped(
                        mm(depth),
                        Region.of(
                                Rings.circle(mm(socketRadius(square, print))),
                                Rings.rectangle(side, side).reversed()));
    }
}
