/**
 * Outlines of printed gears: closed rings of lines and true arcs, and the masses that follow from them.
 *
 * <p>Lengths are in millimetres here, since this is where the module, the nozzle and the printer's allowances enter.
 * Straight flanks and round ones are carried over exactly; involutes, trochoids and epicycloids become pairs of arcs
 * that share tangents with the curve and stay within a stated distance of it. Areas and moments are integrated over the
 * arcs themselves, not over a polygon.
 *
 * <p>An outer ring runs anticlockwise, a hole clockwise. A wheel and the pinion on its arbor are layers of one {@link
 * drumfall.solver.teeth.outline.PrintedPart}.
 *
 * <p>May depend on {@code flank} and {@code form}.
 *
 * <p>Rejected: {@code java.awt.geom} shapes, which know no arcs through a path iterator and would bring the window
 * toolkit into the library; and polygons throughout, which print as facets and make exact tooth placing a matter of
 * rounding.
 */
package drumfall.solver.teeth.outline;
