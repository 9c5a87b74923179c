/**
 * Printed parts as they are made, as far as the search asks: their masses, what they take up along an arbor; ratchet, bob and
 * weight.
 *
 * <p>Every mass is a figure of one mesh, of one drum, or of the brief alone, since the halves of a train are listed, bounded and
 * replaced one by another by figures of their own meshes. That holds because all wheels are crossed out by one rule with the
 * same hub and the same straight arms ({@link drumfall.solver.parts.Crossing}): a pinion wider than the hub goes down to the bed
 * through the wheel, and what it fills of the windows hangs on its own radius. {@code making} draws wheels and pinions by the
 * same numbers. May depend on {@code train} and {@code teeth}.
 *
 * <p>What is left out: bores, since a pinion's rod is not known before the number of meshes is; leaves beyond the next plane,
 * which a layout may ask for; spacers; windows that a wide pinion closes on a small wheel. Together with the rounding to whole
 * layers that is less than a third of a percent of the least weight of the bundled briefs' trains, spacers apart.
 *
 * <p>Rejected: leaving masses to the exporters; bore friction needs them in the search. Rejected too: a hub that follows the
 * pinion by a wall, arms that follow the module, and a great wheel solid up to its click. Their masses hang on both meshes of an
 * arbor, or on the drum; weighing discs by a share instead was a quarter to two thirds off.
 */
package drumfall.solver.parts;
