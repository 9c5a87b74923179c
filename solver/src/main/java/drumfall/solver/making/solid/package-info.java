/**
 * Printed solids as slabs of constant section, one on another.
 *
 * <p>A slab is a height and a plane region of closed rings of lines and true arcs, as {@code teeth.outline} draws them.
 * Volume, mass and moment of inertia are integrated over the arcs themselves. A solid that exists is sound: rings are
 * closed and do not cross, holes lie in their outlines, heights are positive, nothing floats above a gap.
 *
 * <p>Lengths are in millimetres, as in the outlines. May depend on {@code teeth.outline}.
 *
 * <p>Rejected: a boundary of triangles as the solid itself, which fixes the chord error long before anyone asks for a
 * file, and makes every mass a little wrong; and solids joined by set operations in space, whose robust form is a library
 * of its own, while clock parts are cut from plates and look it.
 */
package drumfall.solver.making.solid;
