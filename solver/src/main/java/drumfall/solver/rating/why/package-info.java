/**
 * Where figures come from: cards that carry formula, inputs and source, chained back to the brief.
 *
 * <p>A card's formula is text in the field's symbols and a Java function of its inputs' values; its value is what the rating
 * says, reckoned elsewhere. So every card can be checked: the function over the inputs must give the value. Cards end at
 * fields of the brief (with their JSON pointer), at counts of the train, at what the contact of the drawn teeth gave, and at
 * constants of nature. What a maker sets in place of what the rating takes has cards too: {@link
 * drumfall.solver.rating.why.WhereFromDials} reckons a rating's cards anew, {@link
 * drumfall.solver.rating.why.WhereFromPower} has those of the books under any weight, {@link
 * drumfall.solver.rating.why.WhereFromMesh} those of one mesh, {@link drumfall.solver.rating.why.WhereFromChanges} those of what
 * changes save, {@link drumfall.solver.rating.why.WhereFromChance} that of the chance that a weight runs. May depend on {@code rating} and all before it. Rejected: keeping formulas as text in the window's
 * bundles alone; such texts drift away from what is reckoned, and no test can tell.
 */
package drumfall.solver.rating.why;
