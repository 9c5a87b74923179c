/**
 * Rings that many parts share: circles, polygons, bands around two circles, pieces of annuli.
 *
 * <p>Millimetres. May depend on {@code teeth.outline}. Rejected: adding these to {@code teeth.outline}, which knows gears
 * and nothing else.
 */
package drumfall.solver.making.shape;
