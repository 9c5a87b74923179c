// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.shape.Rings;
import drumfall.solver.making.solid.Region;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Slab;
import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.outline.Outline;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/**
 * A plate cut into pieces for the bed, across its height and, if it is wider than the bed, across its width too; tails stand
 * up from each piece into the one above it, and to the right into the one beside it.
 *
 * @param plate the plate, at least as high as it is wide
 * @param joint how pieces are joined
 */
record PlateSplit(Plate plate, Joint joint) {
    /** Cuts are tried half a millimetre apart. */
    private static final double STEP = 5e-4;

    /** Row by row from below, each from the left. */
    List<Solid> pieces(double bedWidth, double bedDepth) {
        double small = Math.min(bedWidth, bedDepth);
        double large = Math.max(bedWidth, bedDepth);
        boolean lengthwise = plate.width() <= small || plate.width() > large;
        double across = lengthwise ? small : large;
        double up = lengthwise ? large : small;
        List<Double> columns = new PlateSplit(plate.turned(), joint).ends(across);
        List<Double> rows = ends(up);
        List<Solid> pieces = new ArrayList<>();
        for (int row = 1; row < rows.size(); row++) {
            for (int column = 1; column < columns.size(); column++) {
                pieces.add(piece(new Range(columns, column), new Range(rows, row)));
            }
        }
        return pieces;
    }

    /**
     * What a piece takes up of a side of the plate.
     *
     * @param from where it begins
     * @param to where it ends
     * @param first whether it begins with the plate
     * @param last whether it ends with the plate
     */
    private record Range(double from, double to, boolean first, boolean last) {
        Range(List<Double> ends, int index) {
            this(ends.get(index - 1), ends.get(index), index == 1, index == ends.size() - 1);
        }

        boolean holds(double place) {
            return place > from && place < to;
        }
    }

    /** The lower end, the cuts and the upper end. */
    private List<Double> ends(double along) {
        List<Double> ends = new ArrayList<>();
        ends.add(-plate.height() / 2);
        if (plate.height() > along) {
            ends.addAll(cuts(along));
        }
        ends.add(plate.height() / 2);
        return ends;
    }

    /** Heights of the cuts, as even as holes allow. */
    private List<Double> cuts(double along) {
        double most = along - joint.depth();
        SizeLimitException.atLeast(
                "spacing of dovetails of the " + plate.name(),
                plate.width(),
                joint.head() + 2 * (plate.print().fit() + plate.print().wall()),
                "room for one of them");
        SizeLimitException.atLeast("printer's bed for the " + plate.name(), most, 3 * joint.depth(), "three dovetails");
        List<Double> cuts = new ArrayList<>();
        double from = -plate.height() / 2;
        double end = plate.height() / 2;
        while (end - from > along) {
            int left = (int) Math.ceil((end - from) / most - 1e-9);
            double wanted = from + (end - from) / left;
            double cut = nearestFree(from, wanted, Math.min(from + most, end - joint.depth()));
            cuts.add(cut);
            from = cut;
        }
        return cuts;
    }

    /** The free height nearest to the one wanted; refused if there is none. */
    private double nearestFree(double from, double wanted, double most) {
        double least = from + 2 * joint.depth();
        for (int i = 0; i * STEP <= most - least; i++) {
            double above = wanted + i * STEP;
            double below = wanted - i * STEP;
            if (above <= most + 1e-12 && above >= least && free(above)) {
                return above;
            }
            if (below >= least && below <= most + 1e-12 && free(below)) {
                return below;
            }
        }
        throw new IllegalArgumentException("The " + plate.name() + " (" + mm(plate.height())
                + " mm long) must have a strip of "
                + mm(joint.depth() + 2 * plate.print().wall())
                + " mm without holes on every piece for its dovetails. Maybe move an arbor or print on a larger bed.");
    }

    private boolean free(double cut) {
        double wall = plate.print().wall();
        double low = cut - wall;
        double high = cut + joint.depth() + plate.print().fit() + wall;
        return plate.holes().stream()
                .noneMatch(hole -> hole.y() + hole.radius() > low && hole.y() - hole.radius() < high);
    }

    private Solid piece(Range across, Range up) {
        List<PlateHole> inside = plate.holes().stream()
                .filter(hole -> across.holds(hole.x()) && up.holds(hole.y()))
                .toList();
        List<Double> levels = Stream.concat(
                        inside.stream().filter(hole -> hole.depth() > 0).map(hole -> plate.thickness() - hole.depth()),
                        Stream.of(0.0, plate.thickness()))
                .distinct()
                .sorted()
                .toList();
        Ring outer = outer(across, up);
        List<Slab> slabs = new ArrayList<>();
        for (int i = 1; i < levels.size(); i++) {
            double level = levels.get(i - 1);
            List<Ring> holes = inside.stream().map(hole -> hole(hole, level)).toList();
            slabs.add(new Slab(mm(level), mm(levels.get(i)), Region.of(new Outline(outer, holes))));
        }
        return new Solid(slabs);
    }

    private Ring hole(PlateHole hole, double level) {
        boolean seated = hole.depth() > 0 && level >= plate.thickness() - hole.depth();
        return Rings.hole(new Point(mm(hole.x()), mm(hole.y())), mm(seated ? hole.seat() : hole.through()) / 2);
    }

    /** Anticlockwise from the lower left corner; each side leaves its end to the next. */
    private Ring outer(Range across, Range up) {
        double play = plate.print().fit();
        List<Point> corners = new ArrayList<>();
        List<Point> bottom = edge(across, up.from(), up.first(), play);
        List<Point> right = swapped(edge(up, across.to(), across.last(), 0));
        List<Point> top = new ArrayList<>(edge(across, up.to(), up.last(), 0));
        List<Point> left = new ArrayList<>(swapped(edge(up, across.from(), across.first(), play)));
        Collections.reverse(top);
        Collections.reverse(left);
        for (List<Point> side : List.of(bottom, right, top, left)) {
            corners.addAll(side.subList(0, side.size() - 1));
        }
        return Rings.polygon(corners.stream()
                .map(corner -> new Point(mm(corner.x()), mm(corner.y())))
                .toList());
    }

    /** A side at a height, straight where the plate ends; its ends are the corners themselves, to the last bit. */
    private List<Point> edge(Range along, double height, boolean straight, double play) {
        double width = along.to() - along.from();
        double middle = (along.from() + along.to()) / 2;
        List<Point> side = new ArrayList<>();
        side.add(new Point(along.from(), height));
        if (!straight) {
            List<Point> tails = joint.edge(width, height, play);
            for (Point corner : tails.subList(1, tails.size() - 1)) {
                side.add(new Point(corner.x() + middle, corner.y()));
            }
        }
        side.add(new Point(along.to(), height));
        return side;
    }

    private static List<Point> swapped(List<Point> corners) {
        return corners.stream().map(corner -> new Point(corner.y(), corner.x())).toList();
    }

    /** A solid turned a quarter clockwise. */
    static Solid turnedBack(Solid solid) {
        return new Solid(solid.slabs().stream()
                .map(slab -> new Slab(slab.from(), slab.to(), turnedBack(slab.region())))
                .toList());
    }

    private static Region turnedBack(Region region) {
        return new Region(region.outlines().stream()
                .map(outline -> new Outline(
                        outline.outer().turned(-Math.PI / 2),
                        outline.holes().stream()
                                .map(ring -> ring.turned(-Math.PI / 2))
                                .toList()))
                .toList());
    }
}
