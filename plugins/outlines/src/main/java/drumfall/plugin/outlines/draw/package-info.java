/**
 * Sheets of lines, true arcs and words on named layers, and the two kinds of files they are written to.
 *
 * <p>A {@link drumfall.plugin.outlines.draw.Drawing} is a list of shapes, millimetres, x to the right and y upwards, which
 * {@link drumfall.plugin.outlines.draw.SvgWriter} and {@link drumfall.plugin.outlines.draw.DxfWriter} put on paper. May
 * depend on the solver's rings and the JDK; it knows nothing of clocks. Rejected: polylines of short chords; a cutter
 * follows an arc in one sweep and a maker can measure its radius.
 */
package drumfall.plugin.outlines.draw;
