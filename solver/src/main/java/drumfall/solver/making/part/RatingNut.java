// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.outline.ArcSegment;
import drumfall.solver.teeth.outline.OutlineSegment;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * The nut under the bob: a scalloped knob over a bought nut or a thread cut in its bore.
 *
 * @param diameter m
 * @param bore diameter of the bore as drawn, m
 * @param height m
 * @param scallops hollows to hold it by, from 3 to 24
 * @param print what the printer can do
 */
public record RatingNut(double diameter, double bore, double height, int scallops, PrintSizes print)
        implements PrintedShape {
    private static final int FEWEST = 3;
    private static final int MOST = 24;

    /** Width of a hollow over the pitch of hollows; half leaves as much land. */
    private static final double HOLLOW = 0.5;

    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public RatingNut {
        SizeLimitException.count("scallops of a rating nut", scallops, FEWEST, MOST);
        print.requireHeight("height of a rating nut", height);
        print.requireWall("bore of a rating nut", bore);
        // The hollow's deepest point: the chord's distance less the rise of a quarter circle over half the chord.
        double half = HOLLOW * Math.PI / scallops;
        double waist = Math.cos(half) - (Math.sqrt(2) - 1) * Math.sin(half);
        SizeLimitException.atLeast(
                "diameter of a rating nut",
                diameter,
                (bore + 2 * print.wall()) / waist,
                "two extrusion widths between bore and scallops");
    }

    @Override
    public Solid solid() {
        double radius = mm(diameter) / 2;
        double pitch = 2 * Math.PI / scallops;
        double half = HOLLOW * pitch / 2;
        // Quarter circles inwards from rim to rim: their centres lie outside, a half chord from the chord's middle.
        double chord = radius * Math.sin(half);
        double away = radius * Math.cos(half) + chord;
        List<OutlineSegment> ring = new ArrayList<>();
        for (int i = 0; i < scallops; i++) {
            double angle = i * pitch;
            ArcSegment land = ArcSegment.about(radius, angle + half, angle + pitch - half);
            Point next = Point.polar(radius, angle + pitch + half);
            ring.add(land);
            ring.add(ArcSegment.between(land.end(), next, Point.polar(away, angle + pitch), false));
        }
        return Solid.of(mm(height), Region.of(new Ring(ring), Rings.hole(mm(bore) / 2)));
    }
}
