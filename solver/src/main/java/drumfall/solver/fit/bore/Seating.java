// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import drumfall.solver.fit.layer.LayerHeight;
import java.util.Optional;

/** How one pivot is carried. */
public sealed interface Seating {
    /** The pivot. */
    Pivot pivot();

    /** The hole in the plate. */
    FinishedHole hole();

    /** Play of the arbor on the diameter, nm. */
    long play();

    /** The bearing, if there is one. */
    Optional<Bearing> rolling();

    /**
     * The arbor runs in the plate itself.
     *
     * @param pivot the pivot
     * @param hole its bore
     */
    record Plain(Pivot pivot, FinishedHole hole) implements Seating {
        @Override
        public long play() {
            return hole.play();
        }

        @Override
        public Optional<Bearing> rolling() {
            return Optional.empty();
        }
    }

    /**
     * The arbor turns in a bearing that sits in the plate.
     *
     * @param pivot the pivot, not thicker than the bearing's bore
     * @param hole the seat
     * @param bearing the bearing
     * @param depth depth of the seat in whole layers
     */
    record Rolling(Pivot pivot, FinishedHole hole, Bearing bearing, LayerHeight depth) implements Seating {
        /** Play between the rings, of the arbor in the bore, and of the bearing in its seat if that is loose. */
        @Override
        public long play() {
            return bearing.radialPlay() + bearing.bore() - pivot.diameter() + Math.max(0, hole.play());
        }

        @Override
        public Optional<Bearing> rolling() {
            return Optional.of(bearing);
        }
    }
}
