/**
 * Answers that need the brief: what a change would save, how surely a weight will do, and all bench answers of a rating.
 *
 * <p>Savings come from weighing the changed clock, never from a share of the books: friction taken away at one place also
 * lightens every place above it. May depend on {@code rating}, {@code brief} and {@code power}. Rejected: a normal
 * distribution of weights from the two ends of the bands; the weight is far from linear in friction, and its upper tail,
 * which is what a builder asks about, is the longer one.
 */
package drumfall.solver.rating.answers;
