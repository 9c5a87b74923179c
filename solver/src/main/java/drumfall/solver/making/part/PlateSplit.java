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
 * A plate cut across its height into pieces for the bed; tails stand up from each piece into the one above it.
 *
 * @param plate the plate, at least as high as it is wide
 * @param joint how pieces are joined
 */
record PlateSplit(Plate plate, Joint joint) {
    /** Cuts are tried half a millimetre apart. */
    private static final double STEP = 5e-4;

    List<Solid> pieces(double bedWidth, double bedDepth) {
        double small = Math.min(bedWidth, bedDepth);
        double large = Math.max(bedWidth, bedDepth);
        SizeLimitException.atMost(
                "narrower side of the " + plate.name(),
                plate.width(),
                large,
                "the printer's bed, since it is split only across its length");
        double along = plate.width() <= small ? large : small;
        List<Double> cuts = plate.height() <= along ? List.of() : cuts(along);
        List<Solid> pieces = new ArrayList<>();
        double from = -plate.height() / 2;
        for (double to : cuts) {
            pieces.add(piece(from, to));
            from = to;
        }
        pieces.add(piece(from, plate.height() / 2));
        return pieces;
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
                + " mm high) must have a strip of "
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

    private Solid piece(double from, double to) {
        List<PlateHole> inside = plate.holes().stream()
                .filter(hole -> hole.y() > from && hole.y() < to)
                .toList();
        List<Double> levels = Stream.concat(
                        inside.stream().filter(hole -> hole.depth() > 0).map(hole -> plate.thickness() - hole.depth()),
                        Stream.of(0.0, plate.thickness()))
                .distinct()
                .sorted()
                .toList();
        Ring outer = outer(from, to);
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

    private Ring outer(double from, double to) {
        double half = plate.height() / 2;
        double width = plate.width();
        List<Point> bottom = from == -half
                ? straight(width, from)
                : joint.edge(width, from, plate.print().fit());
        List<Point> top = new ArrayList<>(to == half ? straight(width, to) : joint.edge(width, to, 0));
        Collections.reverse(top);
        return Rings.polygon(Stream.concat(bottom.stream(), top.stream())
                .map(corner -> new Point(mm(corner.x()), mm(corner.y())))
                .toList());
    }

    private static List<Point> straight(double width, double height) {
        return List.of(new Point(-width / 2, height), new Point(width / 2, height));
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
