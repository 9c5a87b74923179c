/**
 * Printed parts as the rating sees them: masses of plain discs and cylinders, and the sizes of ratchet, bob and weight.
 *
 * <p>Masses of crossed-out wheels are a stated share of the solid disc. May depend on {@code train} and {@code teeth}.
 * Rejected: leaving masses to the exporters; bore friction needs them in the search. Rejected too: masses of the wheels as
 * they are made. A made wheel's hub is as wide as the pinion printed on it, and whether it is crossed out at all hangs on
 * what room that leaves, so its mass is no figure of one mesh: on the centre arbor it would need both halves of a train.
 * The halves are listed, bounded and replaced one by another by figures of their own meshes alone.
 */
package drumfall.solver.parts;
