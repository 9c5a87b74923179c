/**
 * The train record: one train with everything known of it, as JSON for programs and as a parts list for people.
 *
 * <p><b>{@code train.json}</b> (UTF-8, two spaces, line feeds; the same handover gives the same bytes). A name that
 * ends in {@code _m}, {@code _mm}, {@code _kg}, {@code _g}, {@code _s}, {@code _h}, {@code _N}, {@code _Nm}, {@code _m2} or {@code _rad}
 * states the unit; a name without such an ending is a count, a word or a plain number. {@code null} stands where there is
 * no finite figure, for example where no weight drives the train. Exact fractions are texts such as {@code "96/5"}.
 *
 * <ul>
 *   <li>{@code format} is {@code "drumfall-train-record"}, {@code version} is 1; a reader should refuse larger versions.
 *   <li>{@code program}: name and version of the program that wrote it.
 *   <li>{@code feasible}: whether every demand is met; {@code placement}: {@code "placed"} if every arbor has a
 *       place within frame and gaps, {@code "left-unplaced"} if the brief asks for none, otherwise {@code "no-place"}.
 *   <li>{@code train}: drum, reeving, escape wheel and the meshes from the drum, each with its place, arbors (numbered from
 *       1, the drum arbor), counts, module, centre distance, turns and whether the counts have no common divisor; if placed,
 *       the direction from the wheel's arbor to the pinion's, anticlockwise from the right, seen from the dial.
 *   <li>{@code figures}: duration, beat, weight with what decides it, pendulum, filament; if placed, width and height of the
 *       parts, depth over plates and motion work, area of the smallest upright plate: of this layout, not the least of all.
 *   <li>{@code objectives}: what the brief wants small, in its order, with the train's value and cell.
 *   <li>{@code demands}: every demand with the train's figure, the limits {@code from} and {@code to} where there are any,
 *       the field of the brief that makes it, and whether it is met.
 *   <li>{@code parts}: the parts list, as in {@code parts.csv}.
 *   <li>{@code brief}: the brief in its own file format, quantities as they were typed; cut out, it opens as a brief.
 *   <li>{@code layout}, if placed: where every arbor stands and every plane lies, in the layout's own file format, to the
 *       nanometre; cut out, it opens as a layout of this brief and train.
 * </ul>
 *
 * <p><b>{@code train-to-rate.json}</b>: the train alone in the file format {@code drumfall-train}, exact to the nanometre, named
 * after the brief; the program's commands read it back as {@code TRAIN.json}. The record's own {@code train} is for other
 * programs, with more in it than that format allows.
 *
 * <p><b>{@code parts.csv}</b> (RFC 4180: a header line, lines end in CR LF, quotes where needed; UTF-8): one line for each
 * printed part that depends on the train. Masses are those the power figures rest on, with crossed-out wheels.
 *
 * <p>May depend on the plugin api, the solver's records and its own copy of Jackson's core, which is packed into the plugin
 * jar. Rejected: Jackson from the program through the plugin loader, which would tie every plugin ever written to the
 * program's version of it; and data binding, which would name the fields after Java's records, so that a renamed component
 * would silently change the file.
 */
package drumfall.plugin.record;
