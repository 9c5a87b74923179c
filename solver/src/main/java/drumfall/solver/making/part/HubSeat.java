// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;
import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.Slab;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.outline.ArcSegment;
import drumfall.solver.teeth.outline.LineSegment;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.OutlineSegment;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The seat of a rolling bearing in an end of what turns on a rod: the bore, widened from that end.
 *
 * @param place such as {@code arbor 2, front}
 * @param diameter as drawn, m
 * @param depth m
 */
public record HubSeat(String place, double diameter, double depth) {
    private static final Point AXIS = new Point(0, 0);

    /** Chords by which the nearest point of an arc is looked for, mm; far below what a printer shows. */
    private static final double CHORD_ERROR = 1e-4;

    private static final double MICROMETRES = 1e3;

    /** Sums of decimal sizes miss each other in the last digits; a nanometre is nothing to a printer, mm. */
    private static final double HAIR = 1e-6;

    /**
     * A solid with seats at its ends.
     *
     * @param solid bored along its axis
     * @param below the seat from the bed upwards, if there is one
     * @param above the seat from the top downwards, if there is one
     * @param print what the printer can do
     * @throws FitException if a seat is deeper than the solid allows, or leaves less than two extrusion widths to teeth, windows
     *     or holes
     */
    public static Solid cut(Solid solid, Optional<HubSeat> below, Optional<HubSeat> above, PrintSizes print) {
        double floor = mm(below.map(HubSeat::depth).orElse(0.0));
        double ceiling = solid.height() - mm(above.map(HubSeat::depth).orElse(0.0));
        double share = (solid.height() - 2 * mm(print.layer())) / (below.isPresent() && above.isPresent() ? 2 : 1);
        below.ifPresent(seat -> seat.requireDepth(share));
        above.ifPresent(seat -> seat.requireDepth(share));
        List<Slab> slabs = new ArrayList<>();
        for (Slab slab : solid.slabs()) {
            add(slab, slab.from(), Math.min(slab.to(), floor), below, print, slabs);
            add(slab, Math.max(slab.from(), floor), Math.min(slab.to(), ceiling), Optional.empty(), print, slabs);
            add(slab, Math.max(slab.from(), ceiling), slab.to(), above, print, slabs);
        }
        return new Solid(slabs);
    }

    private static void add(
            Slab slab, double from, double to, Optional<HubSeat> seat, PrintSizes print, List<Slab> slabs) {
        if (to > from) {
            slabs.add(new Slab(
                    from, to, seat.map(wider -> wider.in(slab.region(), print)).orElse(slab.region())));
        }
    }

    private void requireDepth(double most) {
        if (mm(depth) > most + HAIR) {
            throw FitException.refused(
                    "depth",
                    text(mm(depth)),
                    "the bearing seat (" + place + ")",
                    "be at most " + text(most) + ", so that two layers are left of what it is cut into",
                    "take a narrower bearing, a bearing at the other end alone, or a rod that turns");
        }
    }

    private Region in(Region region, PrintSizes print) {
        List<Outline> outlines = new ArrayList<>();
        for (Outline outline : region.outlines()) {
            outlines.add(outline.holes().stream().anyMatch(HubSeat::isBore) ? in(outline, print) : outline);
        }
        return new Region(outlines);
    }

    private Outline in(Outline outline, PrintSizes print) {
        List<Ring> holes = new ArrayList<>(outline.holes());
        holes.removeIf(HubSeat::isBore);
        double most = 2 * (nearest(outline.outer(), holes) - mm(print.wall()));
        if (mm(diameter) > most + HAIR) {
            throw FitException.refused(
                    "diameter",
                    text(mm(diameter)),
                    "the bearing seat (" + place + ")",
                    "be at most " + text(most) + ", two extrusion widths short of teeth and windows",
                    "take a smaller bearing, more leaves or a larger module, a bearing at the other end alone, or a rod"
                            + " that turns");
        }
        holes.add(Rings.hole(mm(diameter) / 2));
        return new Outline(outline.outer(), holes);
    }

    /** Millimetres to the thousandth. */
    private static String text(double millimetres) {
        return Nanometres.text(Math.round(millimetres * MICROMETRES) * 1000);
    }

    /** Whether a hole is a circle about the axis. */
    private static boolean isBore(Ring hole) {
        return hole.segments().stream()
                .allMatch(segment ->
                        segment instanceof ArcSegment arc && arc.centre().distance(AXIS) < 1e-9);
    }

    private static double nearest(Ring outer, List<Ring> holes) {
        double nearest = nearest(outer);
        for (Ring hole : holes) {
            nearest = Math.min(nearest, nearest(hole));
        }
        return nearest;
    }

    private static double nearest(Ring ring) {
        return ring.segments().stream().mapToDouble(HubSeat::nearest).min().orElseThrow();
    }

    private static double nearest(OutlineSegment segment) {
        return segment instanceof LineSegment
                ? nearest(segment.start(), segment.end())
                : segment.points(CHORD_ERROR).stream()
                        .mapToDouble(point -> point.distance(AXIS))
                        .min()
                        .orElseThrow();
    }

    private static double nearest(Point start, Point end) {
        double x = end.x() - start.x();
        double y = end.y() - start.y();
        double along = -(start.x() * x + start.y() * y) / (x * x + y * y);
        double share = Math.max(0, Math.min(1, along));
        return Math.hypot(start.x() + share * x, start.y() + share * y);
    }
}
