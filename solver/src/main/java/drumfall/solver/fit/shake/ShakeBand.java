// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;

/**
 * The end shake that is wanted; its ends belong to it, which matters only for parts without any error.
 *
 * @param least nm, not negative
 * @param most nm, more than the least
 */
public record ShakeBand(long least, long most) {
    /** More than 0 and less than 1 mm: common practice, no source. */
    public static final ShakeBand COMMON = new ShakeBand(0, Nanometres.MILLIMETRE);

    /**
     * Checks the order of the ends.
     *
     * @throws FitException if an end is out of range
     */
    public ShakeBand {
        FitException.requireLength("least end shake", "the wanted band", least, 0, Nanometres.LONGEST - 1);
        FitException.requireLength("most end shake", "the wanted band", most, least + 1, Nanometres.LONGEST);
    }
}
