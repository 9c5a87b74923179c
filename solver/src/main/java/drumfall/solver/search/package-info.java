/**
 * The search: a brief in, a front of trains out, with how much of it is proven.
 *
 * <p>{@link drumfall.solver.search.TrainSearch} lists half trains, has the constraint model join them and tells of options
 * as they are found. No train and no time are outcomes, not errors. May depend on every other package of the solver.
 * Rejected: several threads sharing one front; the order of finding would show in nothing but the stream, yet every run
 * would have to prove that.
 */
package drumfall.solver.search;
