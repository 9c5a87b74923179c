// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import drumfall.solver.fit.FitException;
import drumfall.solver.fit.Nanometres;

/**
 * A rolling bearing by its boundary dimensions.
 *
 * @param name designation, such as {@code 623}
 * @param bore nm, positive
 * @param outer outer diameter, nm, more than the bore
 * @param width nm, positive
 * @param radialPlay play between its rings on the diameter, nm, 0 to 0.5 mm
 */
public record Bearing(String name, long bore, long outer, long width, long radialPlay) {
    private static final long WIDEST = 100 * Nanometres.MILLIMETRE;

    /**
     * Checks the dimensions.
     *
     * @throws FitException if one is out of range
     */
    public Bearing {
        FitException.requireName("a bearing", name);
        String owner = "bearing (" + name + ")";
        FitException.requireLength("bore", owner, bore, 1, WIDEST);
        FitException.requireLength("outer diameter", owner, outer, bore + 1, WIDEST);
        FitException.requireLength("width", owner, width, 1, WIDEST);
        FitException.requireLength("radialPlay", owner, radialPlay, 0, Nanometres.MILLIMETRE / 2);
    }
}
