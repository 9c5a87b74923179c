/**
 * Words for what the solver speaks of in enums, pointers and numbers, shared by the terminal and the window.
 *
 * <p>Demands are worded with the maker's own entries ("the clock runs at least 7.5 d"), figures are rounded to the side
 * that does not flatter: durations down, weights up. All of it stands in the bundle {@code wording.properties}. May depend
 * on the solver alone. Rejected: words on the solver's records themselves; the solver would then carry text for people, and
 * the window could not word a thing differently from the terminal.
 */
package drumfall.ui.wording;
