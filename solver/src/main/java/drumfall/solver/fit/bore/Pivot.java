// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;

/**
 * Where an arbor is carried in a plate.
 *
 * @param arbor name of the arbor
 * @param plate name of the plate
 * @param diameter of the arbor there, nm, positive
 */
public record Pivot(String arbor, String plate, long diameter) {
    /**
     * Checks names and diameter.
     *
     * @throws FitException if a name is blank or the diameter out of range
     */
    public Pivot {
        FitException.requireName("an arbor", arbor);
        FitException.requireName("a plate", plate);
        FitException.requireLength("diameter", "arbor (" + arbor + ")", diameter, 1, 100 * Nanometres.MILLIMETRE);
    }

    /** Arbor and plate. */
    public String place() {
        return arbor + ", " + plate;
    }
}
