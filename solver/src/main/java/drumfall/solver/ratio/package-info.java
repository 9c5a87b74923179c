/**
 * Exact ratios: products of wheels over pinions, best fractions and best trains for a target.
 *
 * <p>A clock's arithmetic is exact or it is wrong: the centre arbor must turn the hour hand at 12 and at nothing near 12,
 * while a moon or tide display can only be approximated and its maker wants to know by how much. This package answers
 * both with rational numbers. {@link drumfall.solver.ratio.WheelAndPinion} multiplies a train out;
 * {@link drumfall.solver.ratio.SternBrocot} gives the best fractions under a bound on the denominator, with the mediants
 * on the way; {@link drumfall.solver.ratio.RatioSearch} lists the trains nearest to a target within bounds on teeth and
 * leaves, and its result is a proof, because the whole space is covered;
 * {@link drumfall.solver.ratio.RatioFront} sets the size of the largest wheel against the error. Doubles are used only to skip what is certainly
 * worse; every order and every error shown is exact.
 *
 * <p>This package uses the JDK and the fraction type of Apache Commons Numbers; it needs nothing else of the solver and
 * knows nothing of modules, depthing or which pinion is on which arbor.
 *
 * <p>Rejected: taking the best fractions of the target and splitting each into factors within the bounds, the way the
 * trade did it by hand. It is quick, but a fraction with a large prime in it cannot be cut in wheels, and the best train
 * often is no best fraction at all; nothing then tells how much better another train could have been.
 */
package drumfall.solver.ratio;
