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
 * A pendulum's bob of two like halves, joined face to face: a disc with a channel for the rod along its middle and, on
 * either side of the rod, a chamber for shot. A half lies on its outer face and takes half of each.
 *
 * @param diameter of the bob, m
 * @param thickness of a half, m
 * @param rod diameter of the rod, m
 * @param wall thickness of rim, outer faces and the walls beside the rod, m
 * @param print what the printer can do
 */
public record BobShell(double diameter, double thickness, double rod, double wall, PrintSizes print)
        implements PrintedShape {
    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public BobShell {
        print.requireWall("wall of a bob", wall);
        SizeLimitException.atLeast("rod of a bob", rod, print.extrusion(), "one extrusion width");
        SizeLimitException.atLeast(
                "thickness of a half bob", thickness, leastThickness(rod, wall, print), "a floor under the rod");
        SizeLimitException.atLeast(
                "diameter of a bob",
                diameter,
                leastDiameter(rod, wall, print),
                "so that shot goes in on both sides of the rod");
    }

    private static double channelDepth(double rod, PrintSizes print) {
        return rod / 2 + print.fit();
    }

    /** Thickness of a half with a wall under the rod, m. */
    public static double leastThickness(double rod, double wall, PrintSizes print) {
        return channelDepth(rod, print) + wall;
    }

    /** Diameter at which chambers are two extrusion widths wide, m. */
    public static double leastDiameter(double rod, double wall, PrintSizes print) {
        return 2 * (channelDepth(rod, print) + 2 * wall + print.wall());
    }

    /** What is left of a disc beyond a chord, on the right; mm. */
    private static Ring segment(double radius, double chord) {
        double angle = Math.acos(chord / radius);
        ArcSegment right = ArcSegment.about(radius, -angle, angle);
        return new Ring(List.of(right, new LineSegment(right.start(), right.end()).reversed()));
    }

    private Ring chamber() {
        return segment(mm(diameter / 2 - wall), mm(channelDepth(rod, print) + wall));
    }

    /** Room for shot in both halves together, cubic metres. */
    public double shotVolume() {
        return 4 * (thickness - wall) * Region.of(chamber()).moments().area() / 1e6;
    }

    /** One half. */
    @Override
    public Solid solid() {
        double radius = mm(diameter) / 2;
        double depth = mm(channelDepth(rod, print));
        Ring hole = chamber().reversed();
        Ring other = hole.turned(Math.PI);
        Ring piece = segment(radius, depth);
        // The channel runs along y; what is left of the disc are two pieces beside it.
        Region cheeks = new Region(
                List.of(new Outline(piece, List.of(hole)), new Outline(piece.turned(Math.PI), List.of(other))));
        Solid floor = Solid.of(mm(wall), Region.of(Rings.circle(radius)));
        double under = mm(thickness - wall) - depth;
        Solid pockets = under > mm(print.layer()) / 2
                ? floor.topped(under, Region.of(Rings.circle(radius), hole, other))
                : floor;
        return pockets.topped(mm(thickness) - pockets.height(), cheeks);
    }
}
