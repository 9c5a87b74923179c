// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.plugin.solids.SectionEdges.Directed;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/** The faces between edges as triangles, each with the slabs that it lies in. */
final class SectionFaces {
    private static final int CORNERS = 3;

    /**
     * A triangle.
     *
     * @param a first corner
     * @param b second corner
     * @param c third corner, anticlockwise from the others
     */
    record Triangle(Coordinate a, Coordinate b, Coordinate c) {
        Directed side(int index) {
            return switch (index) {
                case 0 -> new Directed(a, b);
                case 1 -> new Directed(b, c);
                default -> new Directed(c, a);
            };
        }
    }

    private final SectionEdges edges;
    private final List<Triangle> triangles;
    private final Map<Directed, Integer> leftOf = new HashMap<>();
    private final BitSet[] slabs;

    private SectionFaces(SectionEdges edges, List<Triangle> triangles) {
        this.edges = edges;
        this.triangles = triangles;
        this.slabs = new BitSet[triangles.size()];
        for (int i = 0; i < triangles.size(); i++) {
            for (int side = 0; side < CORNERS; side++) {
                if (leftOf.put(triangles.get(i).side(side), i) != null) {
                    throw torn();
                }
            }
        }
        spread();
    }

    /** The faces between edges. */
    static SectionFaces of(SectionEdges edges) {
        GeometryFactory factory = new GeometryFactory();
        Polygonizer polygonizer = new Polygonizer();
        for (Directed edge : edges.all()) {
            polygonizer.add(factory.createLineString(new Coordinate[] {edge.from(), edge.to()}));
        }
        List<Polygon> faces = polygons(polygonizer.getPolygons());
        // The polygonizer's order depends on hashes; the files must not.
        faces.sort((one, other) -> one.compareTo(other));
        List<Triangle> triangles = new ArrayList<>();
        faces.forEach(face -> addTriangles(face, triangles));
        return new SectionFaces(edges, triangles);
    }

    private static List<Polygon> polygons(Collection<?> found) {
        List<Polygon> polygons = new ArrayList<>();
        found.forEach(polygon -> polygons.add((Polygon) ((Polygon) polygon).norm()));
        return polygons;
    }

    private static void addTriangles(Polygon face, List<Triangle> triangles) {
        Geometry cut = ConstrainedDelaunayTriangulator.triangulate(face);
        for (int i = 0; i < cut.getNumGeometries(); i++) {
            Coordinate[] corners = cut.getGeometryN(i).getCoordinates();
            int turn = Orientation.index(corners[0], corners[1], corners[2]);
            if (turn == Orientation.COLLINEAR) {
                throw torn();
            }
            triangles.add(
                    turn == Orientation.COUNTERCLOCKWISE
                            ? new Triangle(corners[0], corners[1], corners[2])
                            : new Triangle(corners[0], corners[2], corners[1]));
        }
    }

    private static IllegalStateException torn() {
        return new IllegalStateException(
                "The triangles of a section must meet side to side. Maybe take a smaller chord error.");
    }

    /** Carries the slabs from the outside, where there are none, across every side. */
    private void spread() {
        Deque<Integer> open = new ArrayDeque<>();
        for (int i = 0; i < triangles.size(); i++) {
            for (int side = 0; side < CORNERS; side++) {
                Directed outward = triangles.get(i).side(side).reversed();
                if (!leftOf.containsKey(outward)) {
                    reach(i, edges.across(outward, new BitSet()), open);
                }
            }
        }
        while (!open.isEmpty()) {
            int from = open.remove();
            for (int side = 0; side < CORNERS; side++) {
                Directed edge = triangles.get(from).side(side);
                Integer beyond = leftOf.get(edge.reversed());
                if (beyond != null) {
                    reach(beyond, edges.across(edge, slabs[from]), open);
                }
            }
        }
    }

    private void reach(int triangle, BitSet found, Deque<Integer> open) {
        if (slabs[triangle] == null) {
            slabs[triangle] = found;
            open.add(triangle);
        } else if (!slabs[triangle].equals(found)) {
            throw torn();
        }
    }

    /** The triangles. */
    List<Triangle> triangles() {
        return triangles;
    }

    /** The slabs a triangle lies in; not to be changed. */
    BitSet slabs(int triangle) {
        return slabs[triangle];
    }

    /** The slabs beyond a triangle's side. */
    BitSet beyond(int triangle, int side) {
        return edges.across(triangles.get(triangle).side(side), slabs[triangle]);
    }
}
