/**
 * The printed parts of a whole movement.
 *
 * <p>{@link drumfall.solver.making.MovementParts} turns a brief and a train into named parts with count, material, mass
 * and solid; the sizes neither of them holds stand in {@link drumfall.solver.making.MakingSizes}, each with where it comes
 * from. Parts are named after their place in the train. Plates are made only where the arbors' places are given.
 *
 * <p>What a layout plans and what is made are the same numbers: both take them from {@code rating.AxialSizes} and {@code
 * parts.RatchetForm}. So are what the walk to the weight weighs and what is made: see {@code parts.Crossing} for wheels, {@code
 * parts.DrumForm} for the drum, {@code parts.DialForm} for motion work and hands. Where a part stands and which way it faces is said by its {@link drumfall.solver.making.Mount} alone,
 * from the {@link drumfall.solver.making.Levels} of the fitted movement; a part with a handedness is drawn for the way it
 * lies on the bed, so that it turns as it must once it is put in. On a rod that stands still the bearings that the brief
 * asks for sit in what turns on it ({@link drumfall.solver.making.HubSeats}); a hub without room for them is refused. The drum's rod always turns: see {@code brief.PartRules}. Rejected: every part drawn as the dial sees it, which lays
 * those that face the back plate on their pinions.
 *
 * <p>May depend on everything up to {@code rating}. Rejected: leaving parts to the exporters, of which every one would
 * then draw its own.
 */
package drumfall.solver.making;
