// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;

/**
 * Equal arbors of one kit.
 *
 * @param name name of the arbor
 * @param diameter nm, positive
 * @param length finished length, nm, positive
 * @param count how many a kit holds, 1 to 1000
 */
public record ArborPiece(String name, long diameter, long length, int count) {
    private static final int MOST = 1000;

    /**
     * Checks the sizes.
     *
     * @throws FitException if one is out of range
     */
    public ArborPiece {
        FitException.requireName("an arbor", name);
        String owner = "arbor (" + name + ")";
        FitException.requireLength("diameter", owner, diameter, 1, Nanometres.LONGEST);
        FitException.requireLength("length", owner, length, 1, Nanometres.LONGEST);
        FitException.requireCount("count", owner, count, 1, MOST);
    }
}
