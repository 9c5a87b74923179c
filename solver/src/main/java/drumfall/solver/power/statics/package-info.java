/**
 * Statics of arbors on two supports: reactions, friction torque by vectors, bending.
 *
 * <p>Axes as seen from the dial: across to the right, up against gravity; angles in radians from across towards up. Places
 * along an arbor are metres behind the front support, negative or beyond the span where a part overhangs. Nothing here knows
 * how arbors came to be placed. May depend on {@code power} and {@code power.books}. Rejected: turning the walk's slopes
 * down by a mean cosine of the angles between forces; where two forces nearly cancel, the weight of the parts decides, and
 * no cosine says so.
 */
package drumfall.solver.power.statics;
