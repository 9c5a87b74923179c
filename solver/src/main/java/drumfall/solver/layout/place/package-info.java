/**
 * Finds a layout, or proves that there is none.
 *
 * <p>{@link drumfall.solver.layout.place.Placer} starts at the dial centre and sets one arbor after another, first towards
 * the drum, then towards the escape wheel, pallets and motion work, each at its centre distance from one that stands
 * already, in a direction of the grid or as locked. All sound orders of the planes are carried along as a set: where two
 * parts are not clear in the elevation, the orders in which they meet drop out, and a branch ends when none is left. So
 * directions and planes are never multiplied out. Why nothing is lost:
 *
 * <ul>
 *   <li>What the elevation can see of an order of planes is which pairs of planes meet. Of two orders of which one meets
 *       in no pair that the other does not, and is no deeper, the other can go.
 *   <li>Packing planes as tightly as their order allows changes no pair and gives the least depth. Looking from behind
 *       gives the same pairs and depth, so it is enough to build orders with the drum before the great wheel.
 *   <li>Extent, clashes and the lower bounds of all wishes only grow while arbors are added.
 *   <li>The frame is moved over the finished places exactly: without pillars its free places are a rectangle; with them
 *       a rectangle less discs and strips, which, if it holds a point, holds a corner where two of their edges cross.
 *       Such corners are rounded to the four nearest nanometres.
 * </ul>
 *
 * <p>A place lock further out than the next arbor closes a linkage: the last free arbor before it stands at one of two
 * points where circles cross, off the grid; those before it are on the grid.
 *
 * <p>May depend on {@code layout} and {@code layout.size}. Rejected: a search of its own for each order of the
 * planes; it walks the same elevation hundreds of times, and a clash of two rods would be found anew in each.
 */
package drumfall.solver.layout.place;
