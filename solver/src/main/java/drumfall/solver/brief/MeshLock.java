// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Count;
import drumfall.solver.sheet.Measure;
import java.util.Optional;

/**
 * What is held fast of one mesh.
 *
 * @param place which mesh
 * @param wheel teeth of the wheel
 * @param leaves leaves of the pinion
 * @param module the module
 * @param direction from the wheel's arbor to the pinion's, anticlockwise from the right as seen from the dial
 */
public record MeshLock(
        MeshPlace place,
        @Count(from = 6, to = 300) Optional<Integer> wheel,
        @Count(from = 5, to = 60) Optional<Integer> leaves,

        @Measure(value = Dimension.LENGTH, from = "0.2 mm", to = "20 mm")
        Optional<Quantity> module,

        @Measure(value = Dimension.ANGLE, from = "-360 deg", to = "360 deg")
        Optional<Quantity> direction) {
    /**
     * A lock that holds nothing yet.
     *
     * @param place which mesh
     */
    public static MeshLock open(MeshPlace place) {
        return new MeshLock(place, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
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
        return new MeshLock(place, count, leaves, module, direction);
    }

    /**
     * The lock with the pinion's count held or, if it is empty, let go.
     *
     * @param count leaves
     */
    public MeshLock withLeaves(Optional<Integer> count) {
        return new MeshLock(place, wheel, count, module, direction);
    }

    /**
     * The lock with the module held or, if it is empty, let go.
     *
     * @param size the module
     */
    public MeshLock withModule(Optional<Quantity> size) {
        return new MeshLock(place, wheel, leaves, size, direction);
    }

    /**
     * The lock with the direction held or, if it is empty, let go.
     *
     * @param angle from the wheel's arbor to the pinion's
     */
    public MeshLock withDirection(Optional<Quantity> angle) {
        return new MeshLock(place, wheel, leaves, module, angle);
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
                direction.or(other::direction));
    }
}
