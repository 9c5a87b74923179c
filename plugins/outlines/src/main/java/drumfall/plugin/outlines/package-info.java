/**
 * Outlines of wheels and pinions as SVG and DXF, true to scale in millimetres.
 *
 * <p>One file for each part, named after its place in the train ({@code arbor-2-pinion.svg}), and an overview with the
 * arbors in one row, each wheel meshing with its pinion. The teeth are those the solver chose for the mesh, with their
 * fillets, thinned by the middle of the brief's band; a lantern pinion is drawn as one of its shrouds. Outlines are lines
 * and true arcs, within {@link drumfall.plugin.outlines.Gear#TOLERANCE} of the flanks. Wheels are drawn solid. The escape
 * wheel and the drum appear in the overview as circles.
 *
 * <p>A {@link drumfall.plugin.outlines.Drawing} is a list of rings and circles on layers, which
 * {@link drumfall.plugin.outlines.SvgWriter} and {@link drumfall.plugin.outlines.DxfWriter} put on paper. May depend on the
 * plugin api, the solver's records and the JDK. Rejected: polylines of short chords; a cutter follows an arc in one sweep
 * and a maker can measure its radius.
 */
package drumfall.plugin.outlines;
