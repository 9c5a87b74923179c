/**
 * Heights of printed parts: a first layer and whole layers upon it.
 *
 * <p>An asked height that the printer cannot make is snapped, and the difference travels with the answer. May depend on
 * {@code fit} only. Rejected: rounding inside whatever asks for a height; the difference was then nobody's, and end shakes
 * were wrong by half a layer for each part.
 */
package drumfall.solver.fit.layer;
