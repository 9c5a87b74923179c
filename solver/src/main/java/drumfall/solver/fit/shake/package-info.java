/**
 * End shake: what is left between an arbor's stack and the frame, how sure that is, and which part to change.
 *
 * <p>A {@link drumfall.solver.fit.shake.ArborStack} lists everything between the plates with its errors. Three answers stand side by
 * side: the worst case, the root-sum-square, and the distribution, sampled and, if all errors are uniform or triangular,
 * exact as a piecewise polynomial. All lengths are nanometres. May depend on {@code fit}. Rejected: correlating parts of one
 * print run; no printer tells by how much, and an unfounded coefficient would look like knowledge.
 */
package drumfall.solver.fit.shake;
