/**
 * Moves one arbor of a layout by hand and has the rest placed anew.
 *
 * <p>An arbor can go where the mesh towards the dial centre lets it: along an arc about its neighbour. {@link
 * drumfall.solver.layout.drag.Drag} finds the point of that arc nearest to where the maker wants the arbor, outside the
 * stretches that no order of the planes could mend, and locks the mesh in that very direction. The arbors between it and
 * the dial centre stay; all others, and the planes, are placed anew.
 *
 * <p>May depend on {@code layout}, {@code layout.size} and {@code layout.place}. Rejected: letting the whole train follow
 * as a chain of springs. It moves arbors that the maker did not touch and comes to rest off every stated direction.
 */
package drumfall.solver.layout.drag;
