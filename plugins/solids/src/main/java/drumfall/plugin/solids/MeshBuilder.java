// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.plugin.solids.SectionEdges.Directed;
import drumfall.plugin.solids.SectionFaces.Triangle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.locationtech.jts.geom.Coordinate;

/** Gathers the boundary of a pile of prisms over triangles. */
final class MeshBuilder {
    private final SectionFaces faces;
    private final Lattice lattice;
    private final float[] levels;
    private final Map<Coordinate, int[]> known = new HashMap<>();
    private final List<float[]> corners = new ArrayList<>();
    private final List<int[]> triangles = new ArrayList<>();

    MeshBuilder(SectionFaces faces, Lattice lattice, float[] levels) {
        this.faces = faces;
        this.lattice = lattice;
        this.levels = levels;
    }

    Mesh build() {
        for (int i = 0; i < faces.triangles().size(); i++) {
            addFlats(faces.triangles().get(i), faces.slabs(i));
            for (int side = 0; side < 3; side++) {
                BitSet bare = (BitSet) faces.slabs(i).clone();
                bare.andNot(faces.beyond(i, side));
                addWalls(faces.triangles().get(i).side(side), bare);
            }
        }
        requireClosed();
        return mesh();
    }

    /** Flats face down where a slab begins over nothing, up where it ends under nothing. */
    private void addFlats(Triangle triangle, BitSet slabs) {
        for (int slab = slabs.nextSetBit(0); slab >= 0; slab = slabs.nextSetBit(slab + 1)) {
            if (slab == 0 || !slabs.get(slab - 1)) {
                add(corner(triangle.a(), slab), corner(triangle.c(), slab), corner(triangle.b(), slab));
            }
            if (!slabs.get(slab + 1)) {
                int top = slab + 1;
                add(corner(triangle.a(), top), corner(triangle.b(), top), corner(triangle.c(), top));
            }
        }
    }

    /** Walls stand where material ends on an edge's right. */
    private void addWalls(Directed edge, BitSet bare) {
        for (int slab = bare.nextSetBit(0); slab >= 0; slab = bare.nextSetBit(slab + 1)) {
            int low = corner(edge.from(), slab);
            int lowNext = corner(edge.to(), slab);
            int high = corner(edge.from(), slab + 1);
            int highNext = corner(edge.to(), slab + 1);
            add(low, lowNext, highNext);
            add(low, highNext, high);
        }
    }

    private void add(int a, int b, int c) {
        triangles.add(new int[] {a, b, c});
    }

    private int corner(Coordinate place, int level) {
        int[] column = known.computeIfAbsent(place, unseen -> {
            int[] none = new int[levels.length];
            Arrays.fill(none, -1);
            return none;
        });
        if (column[level] < 0) {
            column[level] = corners.size();
            corners.add(
                    new float[] {(float) (place.x * lattice.step()), (float) (place.y * lattice.step()), levels[level]
                    });
        }
        return column[level];
    }

    /** Every directed edge once, and its reverse once; otherwise parts of the solid meet in an edge only. */
    private void requireClosed() {
        long[] directed = triangles.stream()
                .flatMapToLong(t -> LongStream.of(key(t[0], t[1]), key(t[1], t[2]), key(t[2], t[0])))
                .sorted()
                .toArray();
        for (int i = 0; i < directed.length; i++) {
            if (i > 0 && directed[i] == directed[i - 1]) {
                throw new IllegalArgumentException("The edge (at "
                        + Arrays.toString(corners.get((int) (directed[i] >> Integer.SIZE)))
                        + " mm) of a solid must belong to two faces only. Maybe let its parts overlap or stand apart.");
            }
            if (Arrays.binarySearch(directed, directed[i] << Integer.SIZE | directed[i] >>> Integer.SIZE) < 0) {
                throw new IllegalStateException(
                        "The surface (open) of a solid must be closed. Maybe report this solid.");
            }
        }
    }

    private static long key(int from, int to) {
        return (long) from << Integer.SIZE | to;
    }

    private Mesh mesh() {
        float[] flat = new float[3 * corners.size()];
        for (int i = 0; i < corners.size(); i++) {
            System.arraycopy(corners.get(i), 0, flat, 3 * i, 3);
        }
        return new Mesh(flat, triangles.stream().flatMapToInt(Arrays::stream).toArray());
    }
}
