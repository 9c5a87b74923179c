// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import drumfall.solver.layout.size.MovementParts;

/** Locks that cannot hold whatever else the layout is. */
final class LockClaims {
    private final MovementParts parts;
    private final Locks locks;

    private LockClaims(MovementParts parts, Locks locks) {
        this.parts = parts;
        this.locks = locks;
    }

    static void check(MovementParts parts, Locks locks) {
        LockClaims claims = new LockClaims(parts, locks);
        locks.places().forEach(claims::checkArbor);
        locks.directions().forEach(claims::checkMesh);
        for (int mesh = 0; mesh < parts.meshes().size(); mesh++) {
            claims.checkNeighbours(mesh);
        }
    }

    private void checkArbor(PlaceLock lock) {
        if (lock.arbor() < 0 || lock.arbor() > parts.escapeArbor()) {
            throw new IllegalArgumentException(
                    "The locked arbor (%d) must be from 0 to %d. Maybe lock the direction of its mesh."
                            .formatted(lock.arbor(), parts.escapeArbor()));
        }
        if (lock.arbor() == parts.centreArbor() && !lock.place().equals(Place.DIAL_CENTRE)) {
            throw new IllegalArgumentException(
                    "The place (%s) of the centre arbor (%d) must be the dial centre. Maybe move the dial in the frame."
                            .formatted(lock.place(), lock.arbor()));
        }
    }

    private void checkMesh(DirectionLock lock) {
        int most = parts.meshes().size() - (parts.motion().isPresent() ? 0 : 1);
        if (lock.mesh() < 0 || lock.mesh() > most) {
            throw new IllegalArgumentException(
                    "The locked mesh (%d) must be from 0 to %d. Maybe there is no motion work."
                            .formatted(lock.mesh(), most));
        }
    }

    private void checkNeighbours(int mesh) {
        Place wheel = lockedPlace(mesh);
        Place pinion = lockedPlace(mesh + 1);
        if (wheel == null || pinion == null) {
            return;
        }
        long distance = parts.meshes().get(mesh).centreDistance();
        double found = wheel.distance(pinion);
        if (Math.abs(found - distance) > LayoutNeed.distanceTolerance()) {
            throw new IllegalArgumentException(
                    "The locked places of arbors (%d and %d) are %.0f nm apart and must be their centre distance (%d nm) apart to 1000 nm. Maybe release one."
                            .formatted(mesh, mesh + 1, found, distance));
        }
        locks.directionOf(mesh).ifPresent(lock -> checkDirection(lock, wheel, pinion, distance));
    }

    private static void checkDirection(DirectionLock lock, Place wheel, Place pinion, long distance) {
        Place asked = wheel.plus(Place.polar(distance, lock.direction()));
        if (asked.distance(pinion) > LayoutNeed.distanceTolerance()) {
            throw new IllegalArgumentException(
                    "The locked direction (%s rad) of mesh (%d) must agree with the locked places of its arbors to 1000 nm. Maybe release one."
                            .formatted(lock.direction(), lock.mesh()));
        }
    }

    private Place lockedPlace(int arbor) {
        return arbor == parts.centreArbor()
                ? Place.DIAL_CENTRE
                : locks.placeOf(arbor).orElse(null);
    }
}
