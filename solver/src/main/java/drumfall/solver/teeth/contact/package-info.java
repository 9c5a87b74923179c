/**
 * Contact of any two flanks, with friction, through one pitch.
 *
 * <p>The driver is turned through one pitch; the follower stands where no tooth penetrates another: at each driver
 * angle, for each pair in reach, the follower is pushed as far as the driver's flank asks, and the pair that asks most
 * carries. This needs no assumption that the flanks are conjugate, so it holds for rounded leaf tops, single arcs,
 * lantern pins, worn centres and tips that catch.
 *
 * <p>The work is done in two steps. {@link drumfall.solver.teeth.contact.MeshTracer} finds the geometry alone, a
 * {@link drumfall.solver.teeth.contact.ContactPath}, which is what costs time and what {@link
 * drumfall.solver.teeth.contact.PathCache} keeps; {@link drumfall.solver.teeth.contact.ContactPath#withFriction} then
 * turns the forces, in microseconds. Thinning only turns flanks, so it moves the phase and the backlash, not the curve.
 *
 * <p>All lengths are in modules, angles in radians. The driver turns anticlockwise about the origin; the follower's
 * centre lies at {@code (a, 0)} and its angle counts clockwise.
 *
 * <p>May depend on {@code flank} and {@code form}.
 *
 * <p>Rejected: solving the condition of common normals for a pair of parameters. It finds stationary points, not the
 * pair that carries, it has no answer where a tip's corner touches, and it needs two unknowns. Rejected as well: a
 * polygon model pushed by bisection; it is kept in the tests as an independent route.
 */
package drumfall.solver.teeth.contact;
