// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the maker has locked in a layout.
 *
 * @param places at most one for each arbor
 * @param directions at most one for each mesh
 */
public record Locks(List<PlaceLock> places, List<DirectionLock> directions) {
    /** Nothing locked. */
    public static final Locks NONE = new Locks(List.of(), List.of());

    /**
     * Copies the lists and checks that nothing is locked twice.
     *
     * @throws IllegalArgumentException if an arbor or a mesh is locked twice
     */
    public Locks {
        places = List.copyOf(places);
        directions = List.copyOf(directions);
        if (places.stream().map(PlaceLock::arbor).distinct().count() < places.size()) {
            throw new IllegalArgumentException(
                    "The place locks (%s) must name each arbor once. Maybe release one.".formatted(places));
        }
        if (directions.stream().map(DirectionLock::mesh).distinct().count() < directions.size()) {
            throw new IllegalArgumentException(
                    "The direction locks (%s) must name each mesh once. Maybe release one.".formatted(directions));
        }
    }

    /** Where an arbor is locked. */
    public Optional<Place> placeOf(int arbor) {
        return places.stream()
                .filter(lock -> lock.arbor() == arbor)
                .map(PlaceLock::place)
                .findFirst();
    }

    /** How a mesh is locked. */
    public Optional<DirectionLock> directionOf(int mesh) {
        return directions.stream().filter(lock -> lock.mesh() == mesh).findFirst();
    }

    /** These locks with the direction of one mesh set or replaced. */
    public Locks with(DirectionLock lock) {
        List<DirectionLock> changed = new ArrayList<>(directions);
        changed.removeIf(old -> old.mesh() == lock.mesh());
        changed.add(lock);
        return new Locks(places, changed);
    }

    /** These locks without the one on an arbor's place. */
    public Locks withoutPlaceOf(int arbor) {
        return new Locks(places.stream().filter(lock -> lock.arbor() != arbor).toList(), directions);
    }

    /** These locks as seen in a mirror on the dial's vertical. */
    public Locks mirrored() {
        return new Locks(
                places.stream()
                        .map(lock -> new PlaceLock(lock.arbor(), lock.place().mirrored()))
                        .toList(),
                directions.stream()
                        .map(lock -> new DirectionLock(lock.mesh(), Math.PI - lock.direction()))
                        .toList());
    }
}
