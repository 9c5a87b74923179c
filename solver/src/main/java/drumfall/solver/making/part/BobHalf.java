// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.outline.ArcSegment;
import drumfall.solver.teeth.outline.LineSegment;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.Ring;
import java.util.List;

/**
 * Half of a pendulum bob: a disc with half of the channel for the rod on its face; two are joined face to face.
 *
 * @param diameter of the bob, m
 * @param thickness of a half, m
 * @param rod diameter of the rod, m
 * @param print what the printer can do
 */
public record BobHalf(double diameter, double thickness, double rod, PrintSizes print) implements PrintedShape {
    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public BobHalf {
        SizeLimitException.atLeast("rod of a bob", rod, print.extrusion(), "one extrusion width");
        SizeLimitException.atLeast(
                "thickness of a half bob", thickness, channelDepth(rod, print) + print.wall(), "a floor under the rod");
        SizeLimitException.atLeast(
                "diameter of a bob",
                diameter,
                2 * (rod + 2 * print.fit()) + 2 * print.wall(),
                "twice the rod and walls");
    }

    private static double channelDepth(double rod, PrintSizes print) {
        return rod / 2 + print.fit();
    }

    @Override
    public Solid solid() {
        double radius = mm(diameter) / 2;
        double half = mm(rod / 2 + print.fit());
        double depth = mm(channelDepth(rod, print));
        // The channel runs along y; what is left of the disc are two pieces beside it.
        double angle = Math.acos(half / radius);
        ArcSegment right = ArcSegment.about(radius, -angle, angle);
        LineSegment chord = new LineSegment(right.start(), right.end());
        Ring piece = new Ring(List.of(right, chord.reversed()));
        Region cheeks =
                new Region(List.of(new Outline(piece, List.of()), new Outline(piece.turned(Math.PI), List.of())));
        return Solid.of(mm(thickness) - depth, Region.of(Rings.circle(radius))).topped(depth, cheeks);
    }
}
