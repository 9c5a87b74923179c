/**
 * Half trains: all that can stand above or below the centre arbor, listed without those that can never be wanted.
 *
 * <p>A train is split where the centre arbor's wheel side meets its pinion side. A {@link drumfall.solver.halves.LowerHalf}
 * tells the other half what torque it needs on the centre arbor and how long its pendulum remembers; an
 * {@link drumfall.solver.halves.UpperHalf} turns that into a weight. Every figure of a joined train is computed by the same
 * operations in the same order as in the rating, so both agree to the last bit.
 *
 * <p>A half is left out only if another one is at least as good in everything that a demand, an objective or the stated
 * order can see of it. The joined weight rises with the torque needed and never rises with the memory, because an average
 * over a longer memory is a further average of the shorter one (see {@link drumfall.solver.teeth.EfficiencyCurve#felt}).
 *
 * <p>A half is also left out if no train with it can change the front found so far: beside the best of every group of other
 * halves, each figure on its own, its train would be too heavy for what its parts add to the other objectives (see
 * {@link drumfall.solver.halves.FrontGrid}).
 *
 * <p>May depend on all packages up to {@code rating}. Rejected: keeping one half for each exact ratio; the torque needed
 * makes most of them comparable, and there are hundreds of thousands of ratios.
 */
package drumfall.solver.halves;
