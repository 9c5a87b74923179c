/**
 * Printed parts as they are made, as far as the search asks: their masses, what they take up along an arbor; ratchet, bob and
 * weight.
 *
 * <p>Every mass is a figure of one mesh, of one drum, or of the brief alone, since the halves of a train are listed, bounded and
 * replaced one by another by figures of their own meshes. That holds because all wheels are crossed out by one rule with the
 * same hub and the same straight arms ({@link drumfall.solver.parts.Crossing}): a pinion wider than the hub goes down to the bed
 * through the wheel, and what it fills of the windows hangs on its own radius; what the click's pivot fills of the great
 * wheel's hangs on the drum. {@code making} draws wheels, pinions and drum by the same numbers. May depend on {@code train} and {@code teeth}.
 *
 * <p>What is left out: leaves beyond the next plane, which a layout may ask for; windows that a wide pinion closes on a small
 * wheel; the tube between some shrouds. Bores hang on an arbor's rod, and motion work, hands and spacers on no train: the
 * supports count them with the arbor's role ({@code rating.ArborLoads}), spacers as long as they can get. So no bundled brief's
 * train is made heavier than it is weighed by a thousandth of its least weight, nor lighter by more than a hundredth but where the
 * frame is far deeper than its movement.
 *
 * <p>Rejected: leaving masses to the exporters; bore friction needs them in the search. Rejected too: a hub that
 * decides by the room it leaves whether its wheel is crossed out, and arms that follow the module. Their masses hang on both
 * meshes of an arbor, so that discs had to be weighed by a share instead, a quarter to two thirds off.
 */
package drumfall.solver.parts;
