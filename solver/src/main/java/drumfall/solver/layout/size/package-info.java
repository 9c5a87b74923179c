/**
 * Sizes that a layout starts from: the parts of a movement, the frame around them and the gaps between them.
 *
 * <p>Every length is a whole number of nanometres, at most one metre. Squares of distances then fit a {@code long}, so
 * "clear by the gap asked" is decided exactly, alike by whoever places, checks or counts; a nanometre is a thousandth of
 * what the centre distances are held to. May depend on nothing else of the project.
 *
 * <p>Rejected: metres as floating-point numbers with a tolerance. A placer and a checker that round differently then
 * disagree about parts that just touch, and a tolerance wide enough to hide that also hides a fault.
 */
package drumfall.solver.layout.size;
