// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Count;
import drumfall.solver.sheet.Measure;
import drumfall.solver.train.Mesh;
import java.math.BigInteger;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What is held fast of one mesh.
 *
 * @param place which mesh
 * @param wheel teeth of the wheel
 * @param leaves leaves of the pinion
 * @param module the module
 * @param distance the centre distance, as the holes in the plates have it; met to a micrometre, see {@link #distanceMetBy}
 * @param direction from the wheel's arbor to the pinion's, anticlockwise from the right as seen from the dial
 */
public record MeshLock(
        MeshPlace place,
        @Count(from = 6, to = 300) Optional<Integer> wheel,
        @Count(from = 5, to = 60) Optional<Integer> leaves,

        @Measure(value = Dimension.LENGTH, from = "0.2 mm", to = "20 mm")
        Optional<Quantity> module,

        @Measure(value = Dimension.LENGTH, from = "1 mm", to = "1 m")
        Optional<Quantity> distance,

        @Measure(value = Dimension.ANGLE, from = "-360 deg", to = "360 deg")
        Optional<Quantity> direction) {
    /** A micrometre: as far as arbors may stand from their centre distance in a sound layout. */
    private static final BigFraction DISTANCE_TOLERANCE = BigFraction.of(1, 1_000_000);

    private static final BigFraction METRES_PER_HALF_NANOMETRE = BigFraction.of(1, 2_000_000_000);

    /**
     * A lock that holds nothing yet.
     *
     * @param place which mesh
     */
    public static MeshLock open(MeshPlace place) {
        return new MeshLock(
                place, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Whether it holds nothing. */
    public boolean isOpen() {
        return equals(open(place));
    }

    /**
     * The lock with the wheel's count held or, if it is empty, let go.
     *
     * @param count teeth
     */
    public MeshLock withWheel(Optional<Integer> count) {
        return new MeshLock(place, count, leaves, module, distance, direction);
    }

    /**
     * The lock with the pinion's count held or, if it is empty, let go.
     *
     * @param count leaves
     */
    public MeshLock withLeaves(Optional<Integer> count) {
        return new MeshLock(place, wheel, count, module, distance, direction);
    }

    /**
     * The lock with the module held or, if it is empty, let go.
     *
     * @param size the module
     */
    public MeshLock withModule(Optional<Quantity> size) {
        return new MeshLock(place, wheel, leaves, size, distance, direction);
    }

    /**
     * The lock with the centre distance held or, if it is empty, let go.
     *
     * @param length from axis to axis
     */
    public MeshLock withDistance(Optional<Quantity> length) {
        return new MeshLock(place, wheel, leaves, module, length, direction);
    }

    /**
     * The lock with the direction held or, if it is empty, let go.
     *
     * @param angle from the wheel's arbor to the pinion's
     */
    public MeshLock withDirection(Optional<Quantity> angle) {
        return new MeshLock(place, wheel, leaves, module, distance, angle);
    }

    /**
     * Both locks together; what this one holds counts where both hold the same.
     *
     * @param other a lock on the same mesh
     */
    public MeshLock and(MeshLock other) {
        return new MeshLock(
                place,
                wheel.or(other::wheel),
                leaves.or(other::leaves),
                module.or(other::module),
                distance.or(other::distance),
                direction.or(other::direction));
    }

    /**
     * Whether a mesh has the distance held, or none is held: {@code |m (z + p) / 2 - a| <= 1 µm}, exactly.
     *
     * <p>A micrometre and not nothing, since it is what a layout is checked to, no drill leaves less, and a distance typed in
     * inches or to the third decimal of a millimetre is the maker's hole all the same: 24 teeth to the inch put 70 teeth on
     * 37.041666… mm, which a drawing gives as 37.042 mm. Both sides are fractions, so the answer holds no rounding.
     *
     * @param mesh the mesh
     */
    public boolean distanceMetBy(Mesh mesh) {
        return distanceMetBy(centreDistance(mesh));
    }

    /** Whether a centre distance, m, is the one held, or none is held. */
    boolean distanceMetBy(BigFraction metres) {
        return distance.map(held -> metres.subtract(held.exact()).abs().compareTo(DISTANCE_TOLERANCE) <= 0)
                .orElse(true);
    }

    /**
     * The exact centre distance {@code m (z + p) / 2} of a mesh, m.
     *
     * @param mesh the mesh
     */
    public static BigFraction centreDistance(Mesh mesh) {
        return METRES_PER_HALF_NANOMETRE.multiply(
                BigInteger.valueOf((long) mesh.module().nanometres() * (mesh.toothCount() + mesh.leafCount())));
    }
}
