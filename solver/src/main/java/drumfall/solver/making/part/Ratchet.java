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
import java.util.ArrayList;
import java.util.List;

/**
 * The ratchet wheel that holds the drum to the great wheel through its click; its teeth lie on the bed.
 *
 * @param teeth number of teeth, from 8 to 90
 * @param radius to the tips, m
 * @param depth of the teeth, m
 * @param thickness of the toothed part, m
 * @param boss height of a boss on it that keeps the drum clear of the click, m; 0 for none
 * @param bore diameter of the bore as drawn, m
 * @param pins holes that hold it to the drum
 * @param holdsAnticlockwise whether the click keeps it from turning anticlockwise, seen as it lies on the bed
 * @param print what the printer can do
 */
public record Ratchet(
        int teeth,
        double radius,
        double depth,
        double thickness,
        double boss,
        double bore,
        PinCircle pins,
        boolean holdsAnticlockwise,
        PrintSizes print)
        implements PrintedShape {
    private static final int FEWEST = 8;
    private static final int MOST = 90;

    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public Ratchet {
        SizeLimitException.count("teeth of a ratchet", teeth, FEWEST, MOST);
        print.requireHeight("thickness of a ratchet", thickness);
        print.requireWall("tooth depth of a ratchet", depth);
        print.requireWall("bore of a ratchet", bore);
        SizeLimitException.atLeast(
                "radius of a ratchet of " + teeth,
                radius,
                depth + print.wall() * teeth / Math.PI,
                "four extrusion widths from tooth to tooth");
        SizeLimitException.atMost(
                "bore of a ratchet",
                bore,
                2 * (radius - depth - print.wall()),
                "two extrusion widths short of the roots");
        if (boss != 0) {
            print.requireHeight("boss of a ratchet", boss);
        }
        pins.requireWithin("a ratchet", bore / 2, bossRadius(radius, depth, print), print);
    }

    /** The boss stays half an extrusion width inside the roots, so that it prints on solid ground. */
    private static double bossRadius(double radius, double depth, PrintSizes print) {
        return radius - depth - print.extrusion() / 2;
    }

    @Override
    public Solid solid() {
        List<Point> corners = new ArrayList<>();
        double pitch = 2 * Math.PI / teeth;
        for (int i = 0; i < teeth; i++) {
            // The steep face is radial; the click's pull is at right angles to it.
            double steep = i * pitch;
            corners.add(Point.polar(mm(radius), steep));
            corners.add(Point.polar(mm(radius - depth), steep));
        }
        Ring saw = Rings.polygon(corners);
        Ring facing = holdsAnticlockwise ? saw : Mirror.of(saw);
        List<Ring> holes = new ArrayList<>(pins.holes());
        holes.add(Rings.hole(mm(bore) / 2));
        Solid toothed = Solid.of(mm(thickness), Region.of(new Outline(facing, holes)));
        Ring round = Rings.circle(mm(bossRadius(radius, depth, print)));
        return boss == 0 ? toothed : toothed.topped(mm(boss), Region.of(new Outline(round, holes)));
    }
}
