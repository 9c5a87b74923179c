/**
 * The train as drawings: the strip with the whole way of the power, and the pitch circles to scale.
 *
 * <p>A plan is computed first, from content, size and the widths of texts: where every circle, line and figure stands, what
 * the pointer hits and in which order the keyboard walks. Plans are plain values and are tested as such; painters only put
 * ink on what a plan has placed. May depend on the solver's records, on the presenter's records and on Swing; knows no
 * presenter that changes anything, only {@link drumfall.ui.presenter.TrainStripActions}.
 *
 * <p>Rejected: a component for every figure. A dozen labels and fields laid over a drawing never agree with it by a pixel,
 * and their focus order follows the order of creation instead of the way of the power.
 */
package drumfall.ui.view.train;
