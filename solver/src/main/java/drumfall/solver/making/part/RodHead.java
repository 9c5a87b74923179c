// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.List;

/**
 * Half of the fitting at the rod's upper end: a hole for the pivot or its bearing, and half of a channel that clamps the
 * rod between two screws.
 *
 * @param width m
 * @param height m
 * @param thickness of a half, m
 * @param rod diameter of the rod, m; the channel takes half of it without play, so that the halves clamp
 * @param pivot diameter of the hole for the pivot as drawn, m
 * @param screw diameter of the screws' holes as drawn, m
 * @param print what the printer can do
 */
public record RodHead(
        double width, double height, double thickness, double rod, double pivot, double screw, PrintSizes print)
        implements PrintedShape {
    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public RodHead {
        print.requireWall("rod of a rod head", rod);
        print.requireWall("screw hole of a rod head", screw);
        print.requireWall("pivot hole of a rod head", pivot);
        SizeLimitException.atLeast(
                "thickness of a rod head", thickness, rod / 2 + print.wall(), "a floor under the rod");
        double wall = print.wall();
        SizeLimitException.atLeast(
                "width of a rod head",
                width,
                Math.max(rod + 2 * screw + 4 * wall, pivot + 2 * wall),
                "walls beside rod, screws and pivot");
        SizeLimitException.atLeast(
                "height of a rod head", height, pivot + 2 * screw + 5 * wall, "walls above and below pivot and screws");
    }

    /** Height of the channel's closed end above the lower edge, mm. */
    private double channel() {
        return mm(height - pivot - 2 * print.wall());
    }

    @Override
    public Solid solid() {
        double half = mm(width) / 2;
        double slot = mm(rod) / 2;
        double tall = mm(height);
        Ring notched = Rings.polygon(List.of(
                new Point(slot, 0),
                new Point(half, 0),
                new Point(half, tall),
                new Point(-half, tall),
                new Point(-half, 0),
                new Point(-slot, 0),
                new Point(-slot, channel()),
                new Point(slot, channel())));
        return Solid.of(mm(thickness) - slot, Region.of(new Outline(Rings.rectangle(-half, 0, half, tall), holes())))
                .topped(slot, Region.of(new Outline(notched, holes())));
    }

    private List<Ring> holes() {
        double wall = mm(print.wall());
        double beside = mm(rod + screw) / 2 + wall;
        Point pivotAt = new Point(0, mm(height) - wall - mm(pivot) / 2);
        double middle = channel() / 2;
        return List.of(
                Rings.hole(pivotAt, mm(pivot) / 2),
                Rings.hole(new Point(beside, middle), mm(screw) / 2),
                Rings.hole(new Point(-beside, middle), mm(screw) / 2));
    }
}
