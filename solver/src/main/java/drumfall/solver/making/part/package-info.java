/**
 * The printed parts of a clock, each a record of sizes in metres that makes its own solid.
 *
 * <p>A record that exists can be printed: its constructor refuses sizes that leave less than two extrusion widths of wall,
 * a bore that reaches the roots, a hole that leaves its part, in one sentence with the limit and the nearest size that
 * works. Solids stand on the print bed the way they are printed, flat side down; what would hang over nothing is a part of
 * its own, such as the drum's second flange.
 *
 * <p>May depend on {@code teeth}, {@code power} (the escapement's geometry) and the packages of solids and shapes; knows
 * neither the brief nor a whole train.
 *
 * <p>Rejected: one class that reads the brief and draws everything, which cannot be tested part by part and grows with
 * every new kind of clock.
 */
package drumfall.solver.making.part;
