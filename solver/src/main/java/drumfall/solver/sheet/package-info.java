/**
 * Sheets: records whose components carry dimension and bounds, read from and written to JSON with units as typed.
 *
 * <p>A sheet in hand is a valid one. Whatever is wrong with a text is collected as
 * {@link drumfall.solver.sheet.SheetProblem}s, each one sentence with the place, the value, the rule and what to try; a
 * field that the record does not know is refused by name, and an absent one is never filled in. May depend on
 * {@code quantity}. Rejected: data binding by a general mapper alone, whose messages speak of classes and tokens.
 */
package drumfall.solver.sheet;
