// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fitting;

import drumfall.solver.fit.bore.FinishedHole;
import drumfall.solver.fit.bore.Seating;
import java.util.Optional;

/**
 * A hole of a plate.
 *
 * @param use what it does
 * @param through the hole that the rod goes through
 * @param seat the seat of the bearing, if its size is known
 */
public record PlateHole(Use use, FinishedHole through, Optional<Seating.Rolling> seat) {
    /** What a hole does. */
    public enum Use {
        /** A rod turns in it. */
        RUNNING,
        /** A rod is held in it. */
        HOLDING,
        /** A rolling bearing sits in it. */
        SEAT,
        /** A rolling bearing whose size the brief does not give is to sit in it. */
        UNKNOWN_SEAT
    }
}
