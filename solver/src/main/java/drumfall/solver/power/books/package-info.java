/**
 * The books of a clock that runs: where every microwatt of its weight goes.
 *
 * <p>The walk to the weight asks upwards, from the escape wheel, what is needed; the books go down from a weight that hangs
 * and follow what becomes of its power at every mesh, bore, hand and pallet until the rest reaches the pendulum. Every loss
 * is reckoned from the force or torque that causes it, never as what is left over, so that their sum is a check. Over many
 * turns each mesh passes its work mean. May depend on {@code power}, {@code parts}, {@code teeth} and {@code train}.
 * Rejected: books at the least running weight alone, with each mesh as the pendulum feels it; a mesh's worst phase does
 * not last, and books that take it for the mean do not balance.
 */
package drumfall.solver.power.books;
