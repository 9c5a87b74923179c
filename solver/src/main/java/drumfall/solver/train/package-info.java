/**
 * The arithmetic of a train: counts, speeds, beats, turns of the drum and duration, all exact.
 *
 * <p>Two views of one thing live here. {@link drumfall.solver.train.GoingTrain} holds counts alone and answers whatever
 * counts answer; it serves trains known only from print as well as our own. {@link drumfall.solver.train.Train} adds
 * what has a size: a module for each mesh, the drum and the reeving. Arbors are numbered from 0, the drum arbor, to
 * {@code n}, the escape arbor; mesh {@code i} (from 0) is driven by the wheel on arbor {@code i} and turns the pinion on
 * arbor {@code i + 1}.
 *
 * <p>Whatever does not contain &pi; is a whole number or a {@code BigFraction}. Whatever does is kept between two
 * rational bounds ({@link drumfall.solver.train.PiBounds}), so that a duration is never accepted by rounding up.
 *
 * <p>May depend on {@code quantity} and {@code ratio}, which has the two counts of a mesh. Rejected: a floating-point ratio with a tolerance, which accepts a train that runs
 * 63&#8531; days for one of 64.
 */
package drumfall.solver.train;
