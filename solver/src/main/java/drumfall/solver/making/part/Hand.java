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
 * A plain tapered hand with a collar, from its boss to a rounded tip.
 *
 * @param length from the axis to the tip's end, m
 * @param boss diameter of the boss and the collar, m
 * @param tip width at the tip, m
 * @param bore diameter of the bore as drawn, m
 * @param thickness m
 * @param collar height of the collar above the hand, m
 * @param print what the printer can do
 */
public record Hand(
        double length, double boss, double tip, double bore, double thickness, double collar, PrintSizes print)
        implements PrintedShape {
    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public Hand {
        print.requireHeight("thickness of a hand", thickness);
        print.requireHeight("collar of a hand", collar);
        print.requireWall("tip of a hand", tip);
        print.requireWall("bore of a hand", bore);
        SizeLimitException.atLeast(
                "boss of a hand", boss, bore + 2 * print.wall(), "two extrusion widths around the bore");
        SizeLimitException.atMost("tip of a hand", tip, boss, "the width at its boss");
        SizeLimitException.atLeast("length of a hand", length, boss + tip / 2, "so that it reaches beyond its boss");
    }

    @Override
    public Solid solid() {
        Point axis = new Point(0, 0);
        Point end = new Point(0, mm(length - tip / 2));
        Ring bored = Rings.hole(mm(bore) / 2);
        Outline flat = new Outline(Rings.band(axis, mm(boss) / 2, end, mm(tip) / 2), List.of(bored));
        return Solid.of(mm(thickness), Region.of(flat))
                .topped(mm(collar), Region.of(Rings.circle(mm(boss) / 2), bored));
    }
}
