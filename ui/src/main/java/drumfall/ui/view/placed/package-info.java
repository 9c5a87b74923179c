/**
 * The placed train: elevation seen from the dial and section through the planes, both to scale.
 *
 * <p>A plan holds in millimetres what is to be drawn, a scale puts millimetres on the sheet, a painter puts ink; so the plans
 * are tested as values and a zoom builds nothing anew. May depend on the presenter, on the look and on the inks and pens of
 * the drawings; knows neither threads nor the placer.
 *
 * <p>Rejected: a scene of components, one for each arbor. Circles overlap as a clock's wheels do, and a tree of rectangles
 * cannot tell which is pointed at.
 */
package drumfall.ui.view.placed;
