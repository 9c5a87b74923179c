/**
 * Half-tooth curves: the flank of one tooth in the gear's own frame, with its analytic normal.
 *
 * <p>Everything here is at module 1, so every length is in modules and every angle in radians. A tooth is symmetrical
 * about its centre line; a flank is therefore told in polar form about the gear's centre, by the half-angle that the
 * tooth fills at a radius. The polar form is what the contact condition needs: the follower's flank must be asked "how
 * wide are you at this radius, and how do you lean there", and every curve in use answers in closed form except the
 * trochoid at the root.
 *
 * <p>A {@link drumfall.solver.teeth.flank.Flank} is a chain of smooth {@link drumfall.solver.teeth.flank.FlankPiece
 * pieces} from the root circle to the tip circle, radius never falling on the way. Corners between pieces are allowed
 * and are contact candidates of their own.
 *
 * <p>May depend on the Java library only.
 *
 * <p>Rejected: one dense table of points per flank, interpolated. It would have made every form look alike in a few
 * lines, but the ratio of a conjugate pair would then ripple by the interpolation error, and the ripple is exactly what
 * the contact analysis is asked for. Rejected as well: Cartesian curves with a general closest-point search, which
 * needs two unknowns where the polar form needs one.
 */
package drumfall.solver.teeth.flank;
