/**
 * The pendulum by itself: its length, its mass, its losses and what disturbs its rate. SI units throughout.
 *
 * <p>Nothing here knows of wheels or pallets, so a question about a pendulum is answered without a train. May depend on
 * {@code quantity} alone. Rejected: the circular error from its series; the arithmetic-geometric mean is exact for every
 * arc and no longer to write.
 */
package drumfall.solver.power.pendulum;
