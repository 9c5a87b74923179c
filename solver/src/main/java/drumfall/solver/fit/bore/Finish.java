// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;

/**
 * How printed holes are brought to size.
 *
 * @param rack the drills to choose from
 * @param skim what the drill is to cut off the diameter, nm, 0.1 to 0.2 mm so that it always cuts
 * @param shrinkage how much smaller than drawn the printer's bores measure, on the diameter, nm, −1 to 1 mm
 */
public record Finish(DrillRack rack, long skim, long shrinkage) {
    /** The least skim: below, an undersize error of the drill leaves bare spots; common practice, no source. */
    public static final long LEAST_SKIM = Nanometres.MILLIMETRE / 10;

    /** The most skim: above, the drill breaks into the infill; common practice, no source. */
    public static final long MOST_SKIM = Nanometres.MILLIMETRE / 5;

    /**
     * Checks the lengths.
     *
     * @throws FitException if one is out of range
     */
    public Finish {
        FitException.requireLength("skim", "the finish", skim, LEAST_SKIM, MOST_SKIM);
        FitException.requireLength("shrinkage", "the finish", shrinkage, -Nanometres.MILLIMETRE, Nanometres.MILLIMETRE);
    }
}
