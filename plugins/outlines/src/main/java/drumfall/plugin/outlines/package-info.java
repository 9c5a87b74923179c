/**
 * Outlines of wheels and pinions as SVG and DXF, true to scale in millimetres.
 *
 * <p>One file for each part, named after its place in the train ({@code arbor-2-pinion.svg}), and an overview with the
 * arbors in one row, each wheel meshing with its pinion. {@link drumfall.plugin.outlines.Gear} draws standard full-depth
 * involute teeth (ISO 53 type A proportions: addendum one module, dedendum 1.25) without profile shift. Every curve is a
 * polyline that keeps within {@link drumfall.plugin.outlines.Gear#CHORD_ERROR} of it. Below the base circle the flank is a
 * straight radial line; there is no fillet at the root, no backlash, and no undercut, so that a few-leaved pinion drawn
 * here is only an approximation of one that runs. The escape wheel and the drum appear in the overview as circles.
 *
 * <p>A {@link drumfall.plugin.outlines.Drawing} is a list of closed outlines and circles on layers, which
 * {@link drumfall.plugin.outlines.SvgWriter} and {@link drumfall.plugin.outlines.DxfWriter} put on paper. May depend on the
 * plugin api, the solver's records and the JDK. Rejected: arcs as polyline bulges in DXF and as path arcs in SVG, which are
 * shorter, but make the two files differ in what a checker measures.
 */
package drumfall.plugin.outlines;
