// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Count;
import drumfall.solver.sheet.Entries;
import drumfall.solver.sheet.Measure;
import java.util.List;
import java.util.Optional;

/**
 * What the maker holds fast; everything absent stays open.
 *
 * @param meshes held counts and modules, one entry for a place at most
 * @param meshesAbove number of meshes from the drum to the centre
 * @param meshesBelow number of meshes from the centre to the escape wheel
 * @param drumDiameter diameter of the drum
 * @param falls falls of line
 * @param escapeTeeth teeth of the escape wheel
 */
public record Locks(
        @Entries(from = 0, to = 8) List<MeshLock> meshes,
        @Count(from = 1, to = 4) Optional<Integer> meshesAbove,
        @Count(from = 1, to = 4) Optional<Integer> meshesBelow,

        @Measure(value = drumfall.solver.quantity.Dimension.LENGTH, from = "1 mm", to = "1 m")
        Optional<Quantity> drumDiameter,

        @Count(from = 1, to = 2) Optional<Integer> falls,
        @Count(from = 4, to = 240) Optional<Integer> escapeTeeth) {
    /** Nothing held. */
    public static final Locks NONE = new Locks(
            List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

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
}
