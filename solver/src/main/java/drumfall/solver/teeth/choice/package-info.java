/**
 * Choice of a tooth form for one mesh, for the torque that gets through at the worst phase.
 *
 * <p>In a clock the wheel drives and the few-leaved pinion is driven, so what a handbook chooses for strength or against
 * undercut may lengthen the approach and cost torque at its worst moment. Here pressure angle, shifts and addenda of an
 * involute, or tops, practical addendum and thickness split of a cycloidal pair, or pins and tooth height of a lantern
 * are searched together; each figure has a {@link drumfall.solver.teeth.choice.Range} that the maker narrows, down to a
 * fixed value. The errors of print and bore are part of the question: a choice is judged at the worst end of their band.
 *
 * <p>The involute search uses the closed form of the efficiency and takes the follower's addendum from the contact ratio
 * wanted, so that it costs milliseconds; whatever is chosen is then measured by the general contact analysis like any
 * other pair. No choice is an outcome, an empty {@code Optional}, not an error.
 *
 * <p>May depend on {@code flank}, {@code form}, {@code contact} and {@code outline}.
 *
 * <p>Rejected: a table of good shifts by leaf count. It would be right for one friction and one band of errors.
 */
package drumfall.solver.teeth.choice;
