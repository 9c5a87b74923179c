/**
 * Measures the search beside other solvers on the same listed halves; compiled by the profile {@code peers} alone.
 *
 * <p>May depend on the solver and on solvers that the program itself never sees. Rejected: other solvers as test
 * dependencies; everybody who builds would fetch a hundred megabytes for a comparison that is made now and then.
 */
package drumfall.solver.bench.peers;
