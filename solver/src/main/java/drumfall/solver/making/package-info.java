/**
 * The printed parts of a whole movement.
 *
 * <p>{@link drumfall.solver.making.MovementParts} turns a brief and a train into named parts with count, material, mass
 * and solid; the sizes neither of them holds stand in {@link drumfall.solver.making.MakingSizes}, each with where it comes
 * from. Parts are named after their place in the train. Plates are made only where the arbors' places are given.
 *
 * <p>May depend on everything up to {@code rating}. Rejected: leaving parts to the exporters, of which every one would
 * then draw its own.
 */
package drumfall.solver.making;
