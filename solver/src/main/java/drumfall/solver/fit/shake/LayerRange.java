// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;

/**
 * By how much a printed part's height may be changed.
 *
 * @param layer one layer, nm, 0.02 to 2 mm
 * @param least least height, nm, positive
 * @param most most height, nm, not below the least
 */
public record LayerRange(long layer, long least, long most) {
    /**
     * Checks the order.
     *
     * @throws FitException if a length is out of range
     */
    public LayerRange {
        FitException.requireLength(
                "layerHeight", "a part", layer, Nanometres.MILLIMETRE / 50, 2 * Nanometres.MILLIMETRE);
        FitException.requireLength("least height", "a part", least, 1, Nanometres.LONGEST);
        FitException.requireLength("most height", "a part", most, least, Nanometres.LONGEST);
    }

    /** How many layers can be taken off a height. */
    int fewer(long height) {
        return Math.toIntExact((height - least) / layer);
    }

    /** How many layers can be put on a height. */
    int more(long height) {
        return Math.toIntExact((most - height) / layer);
    }
}
