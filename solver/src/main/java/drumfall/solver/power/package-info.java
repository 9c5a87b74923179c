/**
 * Power: friction in bores and bearings, and the walk from the escape wheel's need up to the weight. SI units throughout.
 *
 * <p>Every step of the walk is a function of one number, the torque needed below, and rises with it. The search builds on
 * that: partial trains are compared by what they need, and the figures of a train do not depend on how it was found.
 * May depend on {@code train}, {@code teeth}, {@code parts}, {@code power.pendulum} and {@code power.escape}. Rejected: one overall efficiency for the train; it hides
 * constant losses at the escape arbor, where a plain bore can take a quarter of the need.
 */
package drumfall.solver.power;
