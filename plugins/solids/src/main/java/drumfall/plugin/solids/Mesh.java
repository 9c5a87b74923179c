// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.solver.making.solid.Solid;

/** A closed surface of triangles, anticlockwise seen from outside. */
final class Mesh {
    private final float[] coordinates;
    private final int[] corners;

    /**
     * A surface.
     *
     * @param coordinates x, y and z of each vertex in turn, mm
     * @param corners numbers of the three vertices of each triangle in turn
     */
    Mesh(float[] coordinates, int[] corners) {
        this.coordinates = coordinates.clone();
        this.corners = corners.clone();
    }

    /**
     * The boundary of a solid.
     *
     * @param solid the solid
     * @param options how finely it is followed
     * @throws IllegalArgumentException if rings run along each other or parts of the solid meet only in an edge
     */
    static Mesh of(Solid solid, SolidOptions options) {
        Lattice lattice = Lattice.of(solid);
        SectionEdges edges = SectionEdges.of(solid, lattice, options.chordError());
        return new MeshBuilder(SectionFaces.of(edges), lattice, Lattice.levels(solid)).build();
    }

    int vertexCount() {
        return coordinates.length / 3;
    }

    int triangleCount() {
        return corners.length / 3;
    }

    /** A coordinate of a vertex, mm. */
    float coordinate(int vertex, int axis) {
        return coordinates[3 * vertex + axis];
    }

    /** The number of the vertex at a triangle's corner. */
    int vertex(int triangle, int corner) {
        return corners[3 * triangle + corner];
    }

    /** A coordinate of a triangle's corner, mm. */
    float coordinate(int triangle, int corner, int axis) {
        return coordinate(vertex(triangle, corner), axis);
    }
}
