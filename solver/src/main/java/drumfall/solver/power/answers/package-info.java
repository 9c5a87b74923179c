/**
 * Answers at the bench: how long a flicked wheel spins, how long the clock coasts while it is wound, what the key, the line,
 * the click and the wall feel, what arc a weight gives and whether the weight stays clear of the bob.
 *
 * <p>Each is one record of its inputs with the figure as a method, so that a figure never comes without what went into it.
 * May depend on {@code power}, {@code power.pendulum}, {@code power.books}, {@code power.statics} and {@code train}.
 * Rejected: one object that answers everything; the maker asks one question at a time, and its inputs would be lost among
 * the others'.
 */
package drumfall.solver.power.answers;
