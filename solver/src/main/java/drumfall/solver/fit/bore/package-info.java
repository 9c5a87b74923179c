/**
 * Bores and bearing seats with their finishing drills, and the play they leave.
 *
 * <p>Every {@link drumfall.solver.fit.bore.FinishedHole} keeps all that it was made from, so that a number on the builder's
 * sheet can be traced. May depend on {@code fit} and {@code fit.layer}. Rejected: a reamer or the printed bore as the finish;
 * printed bores are undersize by an amount that wanders, and makers own drills.
 */
package drumfall.solver.fit.bore;
