/**
 * Printed parts as binary STL, one file each, and as one 3MF package; millimetres, flat side down at height 0.
 *
 * <p>A solid of slabs becomes a closed surface in three steps. {@link drumfall.plugin.solids.Lattice} puts every corner on
 * a grid so fine that nobody sees it and so coarse that an STL file's numbers hold it exactly. {@link
 * drumfall.plugin.solids.SectionEdges} lays the rings of all slabs over each other in one plane and cuts them where they
 * meet. {@link drumfall.plugin.solids.SectionFaces} triangulates the faces between them and says of each triangle which
 * slabs it lies in. The solid is then a pile of prisms over these triangles, and {@link drumfall.plugin.solids.Mesh} its
 * boundary: walls and flats share every edge, so that there is no crack to mend.
 *
 * <p>May depend on the plugin api, the solver's records and JTS, which comes with the jar. Rejected: triangulating each flat
 * by itself, which leaves corners of one ring in the middle of another's edge; and leaving the mending to the slicer, since
 * slicers mend in silence and each differently.
 */
package drumfall.plugin.solids;
