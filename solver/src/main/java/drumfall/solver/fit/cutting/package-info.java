/**
 * Arbors cut from stock rods for any number of kits: the fewest rods, and whether that is proven.
 *
 * <p>A plan is found by first fit, by rounding the price programme of Gilmore and Gomory, or by a counted search; it is proven
 * when its number of rods equals a lower bound that is worked out in whole numbers only. Nothing depends on time or chance.
 * May depend on {@code fit}. Rejected: the constraint solver; equal rods are interchangeable and it has to be told so, while
 * the price bound settles nearly every case at once.
 */
package drumfall.solver.fit.cutting;
