/**
 * Displays beside the hands: moon, tide, sidereal time, the year, or any cycle, driven from an arbor of the movement.
 *
 * <p>Such a cycle is no ratio of whole numbers, so its train is an approximation, and a maker wants to know the best one
 * that can be cut, that there is none better, and after how long its error will show.
 * {@link drumfall.solver.display.Display} says what is shown, {@link drumfall.solver.display.DrivingArbor} where the motion
 * comes from, {@link drumfall.solver.display.DisplaySearch} finds the trains, and
 * {@link drumfall.solver.display.DisplayError} tells what they do in a day and when it can be seen. All of it is exact.
 *
 * <p>A driver turns a follower; which of the two is called a pinion depends on whether the display is slower or faster
 * than its arbor, so neither is called so here.
 *
 * <p>May depend on {@code quantity}, {@code sheet}, {@code ratio} and {@code train}. Rejected: a class for each display.
 * A moon and a tide differ in one number and in how many cycles stand on their disc; what they share is the whole of the
 * work.
 */
package drumfall.solver.display;
