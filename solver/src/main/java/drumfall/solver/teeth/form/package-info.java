/**
 * Tooth forms: involute, clockmaker's cycloidal and lantern, each with its limits.
 *
 * <p>Everything is at module 1; the module scales out of the kinematics and of every ratio of torques, so one result
 * serves all sizes. A form is a small record of what the maker chooses (counts, shift, addendum, top, thickness, fillet)
 * and builds its {@link drumfall.solver.teeth.flank.Flank} on demand, so forms compare by value and serve as keys.
 * What cannot be cut is refused when the record is made, with the limit and the nearest value that works.
 *
 * <p>The three forms answer one interface, {@link drumfall.solver.teeth.form.ToothForm}; the contact analysis, the
 * outlines and the strength figures never ask which form they hold.
 *
 * <p>May depend on {@code flank} only.
 *
 * <p>Rejected: one "general gear" with optional fields for shift, top and pins. Each form has limits the others do not
 * know, and a field that is meaningless for two forms in three is an invitation to read it.
 */
package drumfall.solver.teeth.form;
