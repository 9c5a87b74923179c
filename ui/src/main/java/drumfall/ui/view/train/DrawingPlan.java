// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Where everything on the drawing stands, px.
 *
 * @param scale pixels for a metre
 * @param arbors places of the arbors from the drum
 * @param discs wheels, pinions, drum and escape wheel
 * @param balloons numbers of the arbors
 * @param distances dimensions of the centre distances
 * @param bar the scale bar
 * @param notes words at the edges
 * @param pointed number of the arbor pointed at
 * @param mesh number of the mesh looked into
 */
record DrawingPlan(
        double scale,
        List<Point2D> arbors,
        List<Disc> discs,
        List<Balloon> balloons,
        List<Distance> distances,
        ScaleBar bar,
        List<StripPlan.Note> notes,
        Optional<Integer> pointed,
        Optional<Integer> mesh) {
    DrawingPlan {
        arbors = List.copyOf(arbors);
        discs = List.copyOf(discs);
        balloons = List.copyOf(balloons);
        distances = List.copyOf(distances);
        notes = List.copyOf(notes);
    }

    /** What a disc is. */
    enum Part {
        /** Drives; pitch circle and tips. */
        WHEEL,
        /** Is driven; pitch circle and tips. */
        PINION,
        /** The drum and its flanges. */
        DRUM,
        /** The escape wheel to its tips. */
        ESCAPE
    }

    /**
     * A round part.
     *
     * @param part what it is
     * @param arbor number of its arbor
     * @param centre px
     * @param inner pitch radius, or the bare drum, px
     * @param outer tip radius, or the flange, px
     * @param count teeth, 0 for the drum
     */
    record Disc(Part part, int arbor, Point2D centre, double inner, double outer, int count) {
        boolean holds(double x, double y) {
            return centre.distance(x, y) <= outer;
        }
    }

    /**
     * The number of an arbor with a leader to it.
     *
     * @param arbor number from 0
     * @param centre of the balloon, px
     * @param radius of the balloon, px
     * @param foot end of the leader, px
     */
    record Balloon(int arbor, Point2D centre, double radius, Point2D foot) {}

    /**
     * A dimension between two arbors.
     *
     * @param from an arbor, px
     * @param to the next arbor, px
     * @param line height of the dimension line, px; not a number where the distance stands on the line of the arbors
     * @param text the distance
     * @param box where the text stands, px
     */
    record Distance(Point2D from, Point2D to, double line, Figure text, Rectangle2D box) {
        boolean lined() {
            return !Double.isNaN(line);
        }
    }

    /**
     * The scale bar.
     *
     * @param box px
     * @param text its length
     */
    record ScaleBar(Rectangle2D box, Figure text) {}

    /** Where the pitch circles of a mesh touch, px. */
    Point2D pitchPoint(int index) {
        Point2D from = arbors.get(index);
        Point2D to = arbors.get(index + 1);
        double share = discs.stream()
                        .filter(disc -> disc.part() == Part.WHEEL && disc.arbor() == index)
                        .mapToDouble(Disc::inner)
                        .findFirst()
                        .orElseThrow()
                / from.distance(to);
        return new Point2D.Double(
                from.getX() + share * (to.getX() - from.getX()), from.getY() + share * (to.getY() - from.getY()));
    }

    /**
     * The mesh at a point.
     *
     * @param x px
     * @param y px
     * @param reach how far from the pitch point, px
     */
    Optional<Integer> meshAt(double x, double y, double reach) {
        return IntStream.range(0, arbors.size() - 1)
                .boxed()
                .filter(index -> pitchPoint(index).distance(x, y) <= reach)
                .min(Comparator.comparingDouble(index -> pitchPoint(index).distance(x, y)));
    }

    /** The arbor under a point: that of the smallest part there. */
    Optional<Integer> arborAt(double x, double y) {
        return discs.stream()
                .filter(disc -> disc.holds(x, y))
                .min(Comparator.comparingDouble(Disc::outer))
                .map(Disc::arbor);
    }
}
