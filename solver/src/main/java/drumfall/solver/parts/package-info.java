/**
 * Printed parts as plain discs and cylinders: their masses and what they take up along an arbor; ratchet and click.
 *
 * <p>Masses of crossed-out wheels are a stated share of the solid disc until outlines are drawn. May depend on
 * {@code train} and {@code teeth}. Rejected: leaving masses to the exporters; bore friction needs them in the search.
 */
package drumfall.solver.parts;
