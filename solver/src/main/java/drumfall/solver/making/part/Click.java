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
 * The click that drops into the ratchet: an arm from its pivot to a rounded nose.
 *
 * @param length from the pivot to the nose's centre, m
 * @param boss diameter of the arm at the pivot, m
 * @param nose diameter of the nose, m, less than the boss
 * @param bore diameter of the pivot's bore as drawn, m
 * @param thickness m
 * @param print what the printer can do
 */
public record Click(double length, double boss, double nose, double bore, double thickness, PrintSizes print)
        implements PrintedShape {
    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public Click {
        print.requireHeight("thickness of a click", thickness);
        print.requireWall("nose of a click", nose);
        print.requireWall("bore of a click", bore);
        SizeLimitException.atLeast(
                "boss of a click", boss, bore + 2 * print.wall(), "two extrusion widths around the bore");
        SizeLimitException.atMost("nose of a click", nose, boss, "the width at its pivot");
        SizeLimitException.atLeast("length of a click", length, boss, "so that its nose stands clear of its pivot");
    }

    @Override
    public Solid solid() {
        Point pivot = new Point(0, 0);
        Point end = new Point(mm(length), 0);
        return Solid.of(
                mm(thickness), Region.of(Rings.band(pivot, mm(boss) / 2, end, mm(nose) / 2), Rings.hole(mm(bore) / 2)));
    }
}
