/**
 * Layout: what a movement asks of its frame, and where its arbors and planes then stand.
 *
 * <p>{@link drumfall.solver.layout.LayoutNeed} says what is asked, {@link drumfall.solver.layout.Layout} is an answer,
 * {@link drumfall.solver.layout.LayoutOutcome} is an answer or the reason that there is none. The dial centre is the
 * origin, x grows to the right seen from the dial, y upwards, and z from the back plate towards the dial; lengths are
 * whole nanometres. Who finds a layout, who checks one and who drags an arbor live in packages of their own below; none of
 * them is used here, and the checker and the finder know nothing of each other.
 *
 * <p>A <em>plane</em> here is a range of z. The wheel and the pinion of a mesh share one, and so do escape wheel and
 * pallets. Parts on two arbors meet along the arbors if less than the axial gap and the end shake lies between their
 * planes; parts that meet must be clear of each other by the radial gap in the elevation.
 *
 * <p>May depend on {@code layout.size}. Rejected: a plane as a bare number with one thickness for all. A drum is as long as
 * several planes, and trains in which the wheels of the light end stand beside the drum would all have been lost.
 */
package drumfall.solver.layout;
