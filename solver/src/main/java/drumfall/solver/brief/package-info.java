/**
 * The brief: what the maker demands, as records, and their reading from and writing to JSON.
 *
 * <p>{@link drumfall.solver.brief.Brief} is the sheet, group by group, in the maker's own units; quantities keep the text
 * they were typed in. Each component carries its dimension and its bounds as an annotation, so that reader, writer,
 * schema and window all follow one description. A brief in hand is a valid one: whatever is wrong with a file is told as
 * {@link drumfall.solver.sheet.SheetProblem}s while it is read.
 *
 * <p>May depend on {@code quantity}, {@code sheet}, {@code train}, {@code teeth}, {@code parts} and {@code power}. Rejected: defaults
 * for absent fields; a brief that leaves something open would change its answer with the version of the program.
 */
package drumfall.solver.brief;
