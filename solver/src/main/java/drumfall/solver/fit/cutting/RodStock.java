// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.cutting;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;

/**
 * Rods of one diameter as they are sold.
 *
 * @param diameter nm, positive
 * @param length nm, positive
 */
public record RodStock(long diameter, long length) {
    /**
     * Checks both lengths.
     *
     * @throws FitException if one is out of range
     */
    public RodStock {
        FitException.requireLength("diameter", "a stock rod", diameter, 1, Nanometres.LONGEST);
        FitException.requireLength("length", "a stock rod", length, 1, Nanometres.LONGEST);
    }
}
