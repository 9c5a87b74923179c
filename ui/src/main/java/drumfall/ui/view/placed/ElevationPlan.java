// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import drumfall.solver.layout.Box;
import drumfall.solver.layout.Disc;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.size.HangingLine;
import drumfall.solver.train.Mesh;
import drumfall.ui.presenter.PlacedState.Seen;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The elevation seen from the dial: mm from the dial centre, to the right and upwards.
 *
 * @param rings all round parts, then all pitch circles
 * @param arbors where each arbor stands, by its number from 0 at the drum
 * @param frame edge of the plates
 * @param falls of the line, from the drum outwards, x alone
 * @param fallTop height from which the line falls
 * @param weight the weight where it hangs wound
 */
record ElevationPlan(
        List<Ring> rings,
        List<Point2D> arbors,
        Rectangle2D frame,
        List<Double> falls,
        double fallTop,
        Rectangle2D weight) {
    private static final double NANOMETRES = 1e-6;

    /** Height of the weight as drawn for its width; the brief gives no height. */
    private static final double WEIGHT_SHARE = 1.6;

    ElevationPlan {
        rings = List.copyOf(rings);
        arbors = List.copyOf(arbors);
        falls = List.copyOf(falls);
    }

    /** What a ring is drawn for. */
    enum Line {
        /** Outline of a part. */
        SOLID,
        /** Pitch circle. */
        PITCH
    }

    /**
     * A circle.
     *
     * @param line how it is drawn
     * @param part whose
     * @param x mm
     * @param y mm
     * @param radius mm
     */
    record Ring(Line line, Part part, double x, double y, double radius) {
        /** Whether it belongs to an arbor. */
        boolean isOn(int arbor) {
            return part.kind() != PartKind.PILLAR && part.number() == arbor;
        }
    }

    static double millimetres(long nanometres) {
        return (double) nanometres * NANOMETRES;
    }

    static ElevationPlan of(Seen seen) {
        Layout layout = seen.layout();
        List<Ring> rings = new ArrayList<>();
        layout.discs().forEach(disc -> rings.add(ring(disc)));
        addPillars(layout, rings);
        addPitchCircles(seen, rings);
        HangingLine line = layout.need().line();
        double width = millimetres(line.weightWidth());
        double height = width * WEIGHT_SHARE;
        return new ElevationPlan(
                rings,
                layout.places().stream().map(ElevationPlan::point).toList(),
                rectangle(layout.frame()),
                layout.falls().stream().map(ElevationPlan::millimetres).toList(),
                millimetres(layout.place(0).y()),
                new Rectangle2D.Double(
                        millimetres(layout.weightMiddle()) - width / 2,
                        millimetres(layout.weightTop()) - height,
                        width,
                        height));
    }

    private static Point2D point(Place place) {
        return new Point2D.Double(millimetres(place.x()), millimetres(place.y()));
    }

    private static Rectangle2D rectangle(Box box) {
        return new Rectangle2D.Double(
                millimetres(box.left()),
                millimetres(box.bottom()),
                millimetres(box.width()),
                millimetres(box.height()));
    }

    private static Ring ring(Disc disc) {
        return ring(Line.SOLID, disc.part(), disc.place(), millimetres(disc.radius()));
    }

    private static Ring ring(Line line, Part part, Place place, double radius) {
        return new Ring(line, part, millimetres(place.x()), millimetres(place.y()), radius);
    }

    private static void addPillars(Layout layout, List<Ring> rings) {
        List<Place> corners = layout.pillarPlaces();
        for (int corner = 0; corner < corners.size(); corner++) {
            long radius = layout.need().envelope().pillars().orElseThrow().radius();
            rings.add(ring(Line.SOLID, new Part(PartKind.PILLAR, corner), corners.get(corner), millimetres(radius)));
        }
    }

    /** Working pitch circles: r_w = a z / (z + p), r_p = a p / (z + p). */
    private static void addPitchCircles(Seen seen, List<Ring> rings) {
        List<Mesh> meshes = seen.train().meshes();
        for (int index = 0; index < meshes.size(); index++) {
            Mesh mesh = meshes.get(index);
            double share =
                    millimetres(seen.layout().need().centreDistance(index)) / (mesh.toothCount() + mesh.leafCount());
            rings.add(ring(
                    Line.PITCH,
                    new Part(PartKind.WHEEL, index),
                    seen.layout().place(index),
                    share * mesh.toothCount()));
            rings.add(ring(
                    Line.PITCH,
                    new Part(PartKind.PINION, index + 1),
                    seen.layout().place(index + 1),
                    share * mesh.leafCount()));
        }
    }

    /** The height, mm, of the part that ends at a place across, nm; of the line at the drum if no round part does. */
    double heightAt(long edge) {
        double x = millimetres(edge);
        return rings.stream()
                .filter(ring -> ring.line() == Line.SOLID && ring.part().kind() != PartKind.PILLAR)
                .filter(ring -> Math.abs(Math.abs(x - ring.x()) - ring.radius()) < NANOMETRES)
                .findFirst()
                .map(Ring::y)
                .orElse(fallTop);
    }

    /** The place across, mm, of the part that ends at a height, nm. */
    double acrossAt(long edge) {
        double y = millimetres(edge);
        return rings.stream()
                .filter(ring -> ring.line() == Line.SOLID && ring.part().kind() != PartKind.PILLAR)
                .filter(ring -> Math.abs(Math.abs(y - ring.y()) - ring.radius()) < NANOMETRES)
                .findFirst()
                .orElseThrow()
                .x();
    }

    /** A part's outline, if there is one. */
    Optional<Ring> outline(Part part) {
        return rings.stream()
                .filter(ring -> ring.line() == Line.SOLID && ring.part().equals(part))
                .findFirst();
    }

    /** Frame, parts and weight: what a fitted sheet shows. */
    Rectangle2D bounds() {
        Rectangle2D all = frame.createUnion(weight);
        for (Ring ring : rings) {
            double r = ring.radius();
            all.add(new Rectangle2D.Double(ring.x() - r, ring.y() - r, 2 * r, 2 * r));
        }
        return all;
    }

    /**
     * The arbor under a point: of all whose parts cover it, the one whose smallest part does.
     *
     * @param x mm
     * @param y mm
     * @param reach how far off a part may be missed, mm
     */
    Optional<Integer> arborAt(double x, double y, double reach) {
        return rings.stream()
                .filter(ring -> ring.line() == Line.SOLID && ring.part().kind() != PartKind.PILLAR)
                .filter(ring -> Math.hypot(x - ring.x(), y - ring.y()) <= ring.radius() + reach)
                .min(Comparator.comparingDouble(
                        ring -> Math.max(ring.radius(), reach) + Math.hypot(x - ring.x(), y - ring.y()) * 1e-3))
                .map(ring -> ring.part().number());
    }
}
