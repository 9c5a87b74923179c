/**
 * Teeth: what one mesh passes on and how large its gears are, for module 1.
 *
 * <p>{@link drumfall.solver.teeth.MeshLoss} is the face that parts, power and search see. May depend on {@code quantity},
 * {@code ratio} and {@code train}. Rejected: one mean efficiency for each mesh; a slow mesh is felt at its worst phase,
 * a fast one at its mean, and few-leaved pinions differ far more in the first than in the second.
 */
package drumfall.solver.teeth;
