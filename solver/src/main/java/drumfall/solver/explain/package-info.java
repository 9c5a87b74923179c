/**
 * Explanations: why a brief has no train and what would help, what each demand costs a chosen train, why a train that the
 * maker has in mind is not on the front.
 *
 * <p>All rest on two questions that the search answers with proof: whether any train meets part of a brief
 * ({@link drumfall.solver.search.DemandOracle}) and which trains no other one beats. Nothing here weighs or guesses: a set
 * of demands is called minimal, a value nearest, a list complete only where every question behind it was answered, and
 * what ran out of time says so. What spares questions is argued where it is done and has a switch
 * ({@code ExplainShortcut}, {@link drumfall.solver.search.QuestionShortcut}), which tests turn off.
 *
 * <p>May depend on every other package of the solver. Rejected: penalties on missed demands in one sum, minimised; the
 * weights between days, millimetres and newtons would be ours, and the answer with them.
 */
package drumfall.solver.explain;
