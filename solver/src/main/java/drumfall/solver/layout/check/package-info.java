/**
 * Checks a layout against its need, knowing nothing of how layouts are found.
 *
 * <p>{@link drumfall.solver.layout.check.LayoutCheck} works from the need's sizes and the layout's places and planes
 * alone: it lists the parts anew, compares every two of them, and names each violated demand with what is asked and what
 * is found. Gaps are decided in whole nanometres, exactly; centre distances to a micrometre.
 *
 * <p>Planes may be thicker, plates further apart and the stated depth larger than the parts need, as a maker may leave
 * spare room on purpose; all of it must fit the frame. A stated depth smaller than the planes take is a fault, since
 * figures and drawings of the movement go by it.
 *
 * <p>May depend on {@code layout} and {@code layout.size}, never on {@code layout.place}. Rejected: letting the placer
 * check itself with the tables it searches by; an error in a table would then be confirmed by the same table.
 */
package drumfall.solver.layout.check;
