// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Count;
import drumfall.solver.sheet.Entries;
import drumfall.solver.sheet.Exchange;
import drumfall.solver.sheet.Measure;
import java.util.List;
import java.util.Optional;

/**
 * What the maker holds fast; everything absent stays open.
 *
 * @param meshes what is held of each mesh, one entry for a place at most
 * @param meshesAbove number of meshes from the drum to the centre
 * @param meshesBelow number of meshes from the centre to the escape wheel
 * @param drumDiameter diameter of the drum
 * @param falls falls of line
 * @param escapeTeeth teeth of the escape wheel
 * @param motionDirection from the centre arbor to the minute arbor of the motion work, anticlockwise from the right as seen
 *     from the dial
 * @param motionDistance from the centre arbor to the minute arbor; the brief's motion work alone decides about it
 * @param palletDistance from the escape arbor to the pallet arbor; the brief's escapement and the escape wheel's count
 *     decide about it
 */
public record Locks(
        @Entries(from = 0, to = 8) List<MeshLock> meshes,
        @Count(from = 1, to = 4) Optional<Integer> meshesAbove,
        @Count(from = 1, to = 4) Optional<Integer> meshesBelow,

        @Measure(value = Dimension.LENGTH, from = "1 mm", to = "1 m")
        Optional<Quantity> drumDiameter,

        @Count(from = 1, to = 2) Optional<Integer> falls,
        @Count(from = 4, to = 240) Optional<Integer> escapeTeeth,

        @Measure(value = Dimension.ANGLE, from = "-360 deg", to = "360 deg")
        Optional<Quantity> motionDirection,

        @Measure(value = Dimension.LENGTH, from = "1 mm", to = "1 m")
        Optional<Quantity> motionDistance,

        @Measure(value = Dimension.LENGTH, from = "1 mm", to = "1 m")
        Optional<Quantity> palletDistance) {
    /** Nothing held. */
    public static final Locks NONE = new Locks(
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    /** Copies the list. */
    public Locks {
        meshes = List.copyOf(meshes);
    }

    /**
     * The lock on one mesh, if there is one.
     *
     * @param place the mesh
     */
    public Optional<MeshLock> at(MeshPlace place) {
        return meshes.stream().filter(lock -> lock.place().equals(place)).findFirst();
    }

    /**
     * These locks with other locks on meshes.
     *
     * @param held what is held of each mesh
     */
    public Locks withMeshes(List<MeshLock> held) {
        return Exchange.in(this, "meshes", held);
    }

    /**
     * These locks with another number of meshes above the centre held.
     *
     * @param count meshes, or empty to let them go
     */
    public Locks withMeshesAbove(Optional<Integer> count) {
        return Exchange.in(this, "meshesAbove", count);
    }

    /**
     * These locks with another number of meshes below the centre held.
     *
     * @param count meshes, or empty to let them go
     */
    public Locks withMeshesBelow(Optional<Integer> count) {
        return Exchange.in(this, "meshesBelow", count);
    }

    /**
     * These locks with another drum diameter held.
     *
     * @param size the diameter, or empty to let it go
     */
    public Locks withDrumDiameter(Optional<Quantity> size) {
        return Exchange.in(this, "drumDiameter", size);
    }

    /**
     * These locks with another number of falls held.
     *
     * @param count falls, or empty to let them go
     */
    public Locks withFalls(Optional<Integer> count) {
        return Exchange.in(this, "falls", count);
    }

    /**
     * These locks with another count of the escape wheel held.
     *
     * @param count teeth, or empty to let them go
     */
    public Locks withEscapeTeeth(Optional<Integer> count) {
        return Exchange.in(this, "escapeTeeth", count);
    }

    /**
     * These locks with another direction of the motion work held.
     *
     * @param angle from the centre arbor to the minute arbor, or empty to let it go
     */
    public Locks withMotionDirection(Optional<Quantity> angle) {
        return Exchange.in(this, "motionDirection", angle);
    }

    /**
     * These locks with another distance of the motion work held.
     *
     * @param length from the centre arbor to the minute arbor, or empty to let it go
     */
    public Locks withMotionDistance(Optional<Quantity> length) {
        return Exchange.in(this, "motionDistance", length);
    }

    /**
     * These locks with another distance of the pallet arbor held.
     *
     * @param length from the escape arbor to the pallet arbor, or empty to let it go
     */
    public Locks withPalletDistance(Optional<Quantity> length) {
        return Exchange.in(this, "palletDistance", length);
    }
}
