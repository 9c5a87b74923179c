// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

import drumfall.solver.brief.Locks;
import drumfall.solver.brief.MeshLock;
import drumfall.solver.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Words for what is held fast, for example "the wheel of mesh 1 below the centre is held at 64 teeth". */
public final class LockWording {
    private LockWording() {}

    /**
     * Everything held, one clause each, in the order of the sheet; empty if nothing is held.
     *
     * @param locks the locks
     */
    public static List<String> clauses(Locks locks) {
        return Stream.of(
                        locks.meshes().stream().flatMap(LockWording::ofMesh),
                        locks.meshesAbove().stream().map(held -> phrase("meshesAbove", held)),
                        locks.meshesBelow().stream().map(held -> phrase("meshesBelow", held)),
                        locks.drumDiameter().map(Quantity::text).stream().map(held -> phrase("drumDiameter", held)),
                        locks.falls().stream().map(held -> phrase("falls", held)),
                        locks.escapeTeeth().stream().map(held -> phrase("escapeTeeth", held)),
                        locks.motionDirection().map(Quantity::text).stream()
                                .map(held -> phrase("motionDirection", held)),
                        locks.motionDistance().map(Quantity::text).stream().map(held -> phrase("motionDistance", held)),
                        locks.palletDistance().map(Quantity::text).stream().map(held -> phrase("palletDistance", held)))
                .flatMap(clauses -> clauses)
                .toList();
    }

    private static Stream<String> ofMesh(MeshLock lock) {
        String place = PlaceWording.of(lock.place());
        return Stream.of(
                        lock.wheel().stream().map(held -> phrase("wheel", place, held)),
                        lock.leaves().stream().map(held -> phrase("leaves", place, held)),
                        lock.module().map(Quantity::text).stream().map(held -> phrase("module", place, held)),
                        ofHole(lock, place))
                .flatMap(clauses -> clauses);
    }

    /** Distance and direction together are one hole. */
    private static Stream<String> ofHole(MeshLock lock, String place) {
        Optional<String> distance = lock.distance().map(Quantity::text);
        Optional<String> direction = lock.direction().map(Quantity::text);
        if (distance.isPresent() && direction.isPresent()) {
            return Stream.of(phrase("hole", place, distance.get(), direction.get()));
        }
        return Stream.concat(
                distance.stream().map(held -> phrase("distance", place, held)),
                direction.stream().map(held -> phrase("direction", place, held)));
    }

    private static String phrase(String what, Object... values) {
        return Words.BOOK.phrase("lock." + what, values);
    }
}
