// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.teeth.outline.ArcSegment;
import drumfall.solver.teeth.outline.GearOutline;
import drumfall.solver.teeth.outline.LineSegment;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.OutlineSegment;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * The wheel of a deadbeat escapement: teeth that lean forward, so that only their tips touch the dead faces.
 *
 * @param tooth the shape of its teeth
 * @param crossings what is cut out of it
 * @param thickness m
 * @param bore diameter of the bore as drawn, m
 * @param clockwise whether it turns clockwise, seen as it lies on the bed
 * @param print what the printer can do
 */
public record EscapeWheel(
        Tooth tooth, Crossings crossings, double thickness, double bore, boolean clockwise, PrintSizes print)
        implements PlateWheel {
    private static final int FEWEST = 4;
    private static final int MOST = 240;
    private static final double MOST_LEAN = 0.6;

    /**
     * Teeth of an escape wheel.
     *
     * @param count number of teeth, from 4 to 240
     * @param radius to the tips, m
     * @param depth from tip to root, m
     * @param land width of the tip, m
     * @param frontLean angle by which the front face leans forward of the radius at the tip, rad, 0 to 0.6
     * @param foot width of a tooth along the root circle, m, at least the tip's
     */
    public record Tooth(int count, double radius, double depth, double land, double frontLean, double foot) {
        /**
         * Checks the count, the lean and that the tooth grows towards its root.
         *
         * @throws SizeLimitException if the count is out of its range, or tip or depth are too large
         * @throws IllegalArgumentException if the lean is out of its range
         */
        public Tooth {
            SizeLimitException.count("teeth of an escape wheel", count, FEWEST, MOST);
            if (!(frontLean >= 0 && frontLean <= MOST_LEAN)) {
                throw new IllegalArgumentException("The frontLean (" + frontLean
                        + " rad) of an escape wheel's teeth must be from 0 to 0.6 rad. Maybe take 0.17 rad.");
            }
            SizeLimitException.atMost("tooth tip of an escape wheel", land, foot, "the width of its foot");
            SizeLimitException.atLeast("radius of an escape wheel", radius, depth, "the depth of its teeth");
        }

        double root() {
            return radius - depth;
        }

        /** How far the front face has fallen back at the root, rad. */
        double front() {
            return Math.asin(Math.min(1, radius * Math.sin(frontLean) / root())) - frontLean;
        }

        double back() {
            return front() + foot / root();
        }

        double pitch() {
            return 2 * Math.PI / count;
        }

        /** The ring of a wheel that turns anticlockwise, a tip's acting corner on the x axis. */
        Ring ring() {
            List<OutlineSegment> segments = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                double acting = i * pitch();
                Point foot = Point.polar(mm(root()), acting - back());
                ArcSegment tip = ArcSegment.about(mm(radius), acting - land / radius, acting);
                ArcSegment gap = ArcSegment.about(mm(root()), acting - front(), acting + pitch() - back());
                segments.add(new LineSegment(foot, tip.start()));
                segments.add(tip);
                Point toe = gap.start();
                segments.add(new LineSegment(tip.end(), toe));
                segments.add(gap);
            }
            return new Ring(segments);
        }
    }

    /**
     * Checks the sizes against each other.
     *
     * @throws SizeLimitException if a size cannot be made
     */
    public EscapeWheel {
        print.requireHeight("thickness of an escape wheel", thickness);
        print.requireWall("bore of an escape wheel", bore);
        SizeLimitException.atLeast(
                "tooth tip of an escape wheel", tooth.land(), print.extrusion(), "one extrusion width");
        SizeLimitException.atMost(
                "bore of an escape wheel",
                bore,
                2 * (tooth.root() - print.wall()),
                "two extrusion widths short of the roots");
        SizeLimitException.atLeast(
                "tooth foot of an escape wheel of " + tooth.count(), tooth.foot(), print.wall(), PrintSizes.TWO_WIDTHS);
        SizeLimitException.atMost(
                "tooth foot of an escape wheel of " + tooth.count(),
                tooth.foot(),
                tooth.root() * tooth.pitch() - print.extrusion(),
                "so that a gap is left");
        crossings.require("an escape wheel", tooth.root(), bore, print);
    }

    @Override
    public double solidRadius() {
        return crossings.solidRadius(tooth.root());
    }

    @Override
    public Region section() {
        Ring ring = clockwise ? Mirror.of(tooth.ring()) : tooth.ring();
        return Region.of(new Outline(ring, GearOutline.inside(crossings.body(bore, print), mm(tooth.root()))));
    }
}
