/**
 * The terminal: one class for each command, tables for people, JSON for machines, one exit code for each way to end.
 *
 * <p>{@link drumfall.ui.terminal.Terminal} is the way in. Commands read, ask the solver and hand what it answers to a table
 * or a JSON document; whatever is wrong with the input leaves them as {@link drumfall.ui.terminal.RefusedInput}, one
 * sentence for each problem, and no stack trace reaches the screen. Text for people stands in {@code terminal.properties}.
 * May depend on the solver, {@code drumfall.ui.wording} and {@code drumfall.ui.plugin}; no Swing. Rejected: figures in JSON
 * as people read them, with their unit in the value; a machine would have to parse what was just rounded.
 */
package drumfall.ui.terminal;
