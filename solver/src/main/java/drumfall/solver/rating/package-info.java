/**
 * Rating: any train held against a brief, every demand met or missed with figure beside limit, and every objective.
 *
 * <p>{@link drumfall.solver.rating.TrainLimits} holds each demand once, as a claim about counts and sizes; the rating
 * reports it, the rules of the search enforce it, and an oracle can recompute it. Demands on counts, ratios,
 * beats and choices are decided in exact arithmetic, the duration between rational bounds of &pi;, sizes of parts in floating
 * point with an allowance of a picometre, so that what just fits does. May depend on all packages up to {@code brief}.
 * Rejected: letting the search compute its own figures; two computations drift apart in the last digit, and a front would
 * depend on which one was asked.
 */
package drumfall.solver.rating;
