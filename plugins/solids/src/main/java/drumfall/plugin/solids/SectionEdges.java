// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.solver.making.solid.Solid;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.teeth.outline.Ring;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/**
 * The edges of all slabs' rings in one plane, cut where they meet, each with the slabs that lie on its left and right.
 *
 * <p>Cutting rounds to the grid, so that edges meet only in grid points, however they crossed.
 */
final class SectionEdges {
    private final Map<Directed, Sides> sides = new TreeMap<>();

    /** A directed edge. */
    record Directed(Coordinate from, Coordinate to) implements Comparable<Directed> {
        Directed reversed() {
            return new Directed(to, from);
        }

        @Override
        public int compareTo(Directed other) {
            int byFrom = from.compareTo(other.from);
            return byFrom != 0 ? byFrom : to.compareTo(other.to);
        }
    }

    /** Slabs whose material an edge bounds. */
    record Sides(BitSet left, BitSet right) {
        boolean none() {
            return left.isEmpty() && right.isEmpty();
        }
    }

    private SectionEdges() {}

    /**
     * The edges of a solid.
     *
     * @param solid the solid
     * @param lattice the grid
     * @param chordError greatest distance of a chord from an arc, mm
     */
    static SectionEdges of(Solid solid, Lattice lattice, double chordError) {
        List<SegmentString> rings = new ArrayList<>();
        snappedRings(solid, lattice, chordError)
                .forEach((corners, slabs) ->
                        rings.add(new NodedSegmentString(corners.toArray(Coordinate[]::new), slabs)));
        SnapRoundingNoder noder = new SnapRoundingNoder(new PrecisionModel(1));
        noder.computeNodes(rings);
        SectionEdges edges = new SectionEdges();
        for (Object piece : noder.getNodedSubstrings()) {
            edges.add((SegmentString) piece);
        }
        edges.sides.values().removeIf(Sides::none);
        return edges;
    }

    /** Rings that several slabs share are one, with the slabs they bound. */
    private static Map<List<Coordinate>, BitSet> snappedRings(Solid solid, Lattice lattice, double chordError) {
        Map<List<Coordinate>, BitSet> rings = new LinkedHashMap<>();
        for (int i = 0; i < solid.slabs().size(); i++) {
            for (Ring ring : solid.slabs().get(i).region().rings().toList()) {
                List<Coordinate> corners = snapped(ring, lattice, chordError);
                rings.computeIfAbsent(corners, unseen -> new BitSet()).set(i);
            }
        }
        return rings;
    }

    private static List<Coordinate> snapped(Ring ring, Lattice lattice, double chordError) {
        List<Coordinate> corners = new ArrayList<>();
        for (Point point : ring.polygon(chordError)) {
            Coordinate corner = lattice.snapped(point);
            if (corners.isEmpty() || !corners.get(corners.size() - 1).equals2D(corner)) {
                corners.add(corner);
            }
        }
        if (!corners.get(0).equals2D(corners.get(corners.size() - 1))) {
            corners.add(corners.get(0));
        }
        return corners;
    }

    private void add(SegmentString piece) {
        BitSet slabs = (BitSet) piece.getData();
        for (int i = 1; i < piece.size(); i++) {
            Directed edge = new Directed(piece.getCoordinate(i - 1), piece.getCoordinate(i));
            boolean forward = edge.from().compareTo(edge.to()) < 0;
            Sides found = sides.computeIfAbsent(
                    forward ? edge : edge.reversed(), unseen -> new Sides(new BitSet(), new BitSet()));
            slabs.stream()
                    .forEach(slab -> count(
                            forward ? found.left() : found.right(), forward ? found.right() : found.left(), slab));
        }
    }

    /** Material on both sides is no edge; twice on one side cannot be. */
    private static void count(BitSet own, BitSet other, int slab) {
        if (other.get(slab)) {
            other.clear(slab);
        } else if (own.get(slab)) {
            throw new IllegalArgumentException("The rings of slab (" + slab
                    + ") must not run along each other. Maybe leave more material between them.");
        } else {
            own.set(slab);
        }
    }

    /** The edges, each once, in a fixed order. */
    Iterable<Directed> all() {
        return sides.keySet();
    }

    /** Whether an edge is one of them, either way round. */
    boolean bounds(Directed edge) {
        return sides.containsKey(edge) || sides.containsKey(edge.reversed());
    }

    /**
     * The slabs on the right of an edge.
     *
     * @param edge an edge, either way round
     * @param left the slabs on its left
     */
    BitSet across(Directed edge, BitSet left) {
        Sides forward = sides.get(edge);
        Sides found = forward != null ? forward : sides.get(edge.reversed());
        BitSet right = (BitSet) left.clone();
        if (found != null) {
            right.andNot(forward != null ? found.left() : found.right());
            right.or(forward != null ? found.right() : found.left());
        }
        return right;
    }
}
