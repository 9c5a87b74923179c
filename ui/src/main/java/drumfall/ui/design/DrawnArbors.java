// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import drumfall.solver.layout.DirectionLock;
import drumfall.solver.layout.Locks;
import drumfall.solver.train.Train;
import java.util.List;
import java.util.Objects;

/**
 * Directions of meshes that the maker has drawn in the layout of one train; another train begins without.
 *
 * @param train whose layout
 * @param directions at most one for each mesh; the number of meshes stands for the motion work
 */
public record DrawnArbors(Train train, List<DirectionLock> directions) {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if a mesh is named twice or is none of the train's
     */
    public DrawnArbors {
        Objects.requireNonNull(train);
        directions = new Locks(List.of(), directions).directions();
        for (DirectionLock lock : directions) {
            if (lock.mesh() < 0 || lock.mesh() > train.meshes().size()) {
                throw new IllegalArgumentException(
                        "The mesh (%d) drawn must be from 0 to %d. Maybe it was drawn in another train."
                                .formatted(lock.mesh(), train.meshes().size()));
            }
        }
    }

    /** As the placer takes them. */
    public Locks locks() {
        return new Locks(List.of(), directions);
    }
}
