/**
 * The constraint model: every demand as one named rule over counts, modules, drum, reeving and escape wheel.
 *
 * <p>The only package that imports Choco. {@link drumfall.solver.rules.TrainRules} is its one public type; the rules
 * stand one by one in {@code RuleBook}, in three groups: those that define a train of the brief, those that only repeat
 * what follows from them (the half trains listed beforehand), and the one that keeps the search on trains which can still
 * change the front.
 *
 * <p>A product of counts is never a variable: Choco's integers end at {@code IntVar.MAX_INT_BOUND} (21,474,836), which two
 * meshes with their escape wheel exceed, and a view past it reports a wrong bound without a word. Rules on products keep
 * their bounds in {@code double} with a margin wider than its rounding, and ask the exact claim once the counts are fixed.
 * Objectives are no variables either, so no resolution is too fine.
 *
 * <p>May depend on all packages up to {@code halves}. Rejected: a table of triples for each mesh and an objective variable
 * for each figure; proving a front of eight that way took half a minute for four meshes.
 */
package drumfall.solver.rules;
