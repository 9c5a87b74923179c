// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.outline.Point;
import java.util.List;

/**
 * The drum with one flange, and its other flange, which is printed by itself since it would hang over.
 *
 * <p>The line's end passes through a hole in the flange, just outside the drum, and is knotted behind it.
 *
 * @param diameter of the bare drum, m
 * @param length between the flanges, m
 * @param wall thickness of wall and flanges, m
 * @param flangeRadius radius of the flanges, m
 * @param lineDiameter diameter of the line, m, positive
 * @param bore diameter of the bore as drawn, m
 * @param pins holes in the first flange that hold the ratchet
 * @param print what the printer can do
 */
public record Drum(
        double diameter,
        double length,
        double wall,
        double flangeRadius,
        double lineDiameter,
        double bore,
        PinCircle pins,
        PrintSizes print)
        implements PrintedShape {
    /** Room of the line in its hole, all round, of its diameter; common practice, no source. */
    private static final double KNOT_PLAY = 0.15;

    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public Drum {
        print.requireWall("wall of a drum", wall);
        print.requireHeight("length of a drum", length);
        print.requireWall("bore of a drum", bore);
        SizeLimitException.atLeast(
                "diameter of a drum", diameter, bore + 2 * print.wall(), "two extrusion widths around the bore");
        SizeLimitException.atLeast("line diameter of a drum", lineDiameter, print.extrusion(), "one extrusion width");
        double knot = knotRadius(diameter, lineDiameter) + holeRadius(lineDiameter);
        SizeLimitException.atLeast(
                "flange radius of a drum",
                flangeRadius,
                knot + print.wall(),
                "two extrusion widths beyond the line's hole");
        boolean hollow = hollow(diameter, wall, bore, pins, print);
        double inner = hollow ? bore / 2 + wall : bore / 2;
        double outer = hollow ? diameter / 2 - wall : diameter / 2;
        pins.requireWithin("a drum", inner, outer, print);
    }

    /** There is a chamber if it takes pins and the other flange's spigot with walls beside them. */
    private static boolean hollow(double diameter, double wall, double bore, PinCircle pins, PrintSizes print) {
        double chamber = diameter / 2 - 2 * wall - bore / 2;
        return chamber >= pins.diameter() + 2 * print.wall() && chamber >= print.wall() + 2 * print.fit();
    }

    private static double holeRadius(double line) {
        return line * (0.5 + KNOT_PLAY);
    }

    private static double knotRadius(double diameter, double line) {
        return diameter / 2 + holeRadius(line);
    }

    private Tub tub() {
        boolean hollow = hollow(diameter, wall, bore, pins, print);
        return new Tub(flangeRadius, wall, diameter / 2, wall, bore, length, hollow);
    }

    /** The drum with its lower flange. */
    @Override
    public Solid solid() {
        // Half a pitch from the first pin, so that the two never meet.
        double angle = pins.count() == 0 ? 0 : Math.PI / pins.count();
        Point knot = Point.polar(mm(knotRadius(diameter, lineDiameter)), angle);
        return tub().solid(List.of(Rings.hole(knot, mm(holeRadius(lineDiameter)))), pins.holes());
    }

    /** The other flange, with a spigot for the drum's end if the drum is hollow. */
    public Solid flange() {
        return tub().lid(print);
    }
}
