/**
 * Outlines of all printed parts, the elevation of the placed movement and the holes of its plates, true to scale in
 * millimetres, as SVG and DXF.
 *
 * <p>One file for each part, named as {@code making} names it after its place ({@code arbor-2-wheel-and-pinion.svg}), with the
 * very outlines it is printed with: lines and true arcs. A section has a layer of its own. Where the arbors have places, the
 * elevation and the holes of both plates are drawn too, seen from the dial, and the holes listed as CSV; where they have
 * none, the read-me says so.
 *
 * <p>May depend on the plugin api, the solver's records and the JDK. Rejected: outlines of the exporter's own, wheel and
 * pinion apart and without crossings; what is cut by an outline and what is printed must be one part.
 */
package drumfall.plugin.outlines;
