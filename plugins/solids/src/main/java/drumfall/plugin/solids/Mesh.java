// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.solver.making.solid.Solid;

/**
 * A closed surface of triangles, anticlockwise seen from outside.
 *
 * @param corners x, y and z of each corner in turn, mm
 * @param triangles three numbers of corners for each triangle
 */
record Mesh(float[] corners, int[] triangles) {
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
        return new MeshBuilder(SectionFaces.of(edges), lattice, lattice.levels(solid)).build();
    }

    int cornerCount() {
        return corners.length / 3;
    }

    int triangleCount() {
        return triangles.length / 3;
    }

    /** A coordinate of a triangle's corner, mm. */
    float coordinate(int triangle, int corner, int axis) {
        return corners[3 * triangles[3 * triangle + corner] + axis];
    }
}
