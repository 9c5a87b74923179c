/**
 * The escapement: what a beat takes from the wheel and what of it reaches the pendulum. SI units throughout.
 *
 * <p>The deadbeat is balanced as a wedge between two rubbing faces, which needs no drawing; the drawing of the pallets stands
 * beside it and says how far the wedge is from it. May depend on {@code sheet}, {@code power.pendulum} and
 * {@code teeth.outline}, whose points here count metres. Rejected: one efficiency for the escapement; friction on the locking faces grows with the arc, so
 * there is an arc that no weight exceeds, and an efficiency hides it.
 */
package drumfall.solver.power.escape;
