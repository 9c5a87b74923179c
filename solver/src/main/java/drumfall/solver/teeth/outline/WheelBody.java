// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import drumfall.solver.teeth.flank.ToothLimitException;

/**
 * What lies inside the teeth of a gear, in millimetres.
 *
 * @param bore diameter of the bore as printed, allowance included
 * @param wall least material around the bore, &gt; 0
 * @param hub diameter of the hub the arms stand on; unused without arms
 * @param rim width of the rim below the teeth's roots; unused without arms
 * @param arms number of arms, 0 for a solid disc, otherwise at least 3
 * @param armWidth width of an arm; unused without arms
 * @param corner radius in the windows' corners, no sharper than the nozzle; unused without arms
 */
public record WheelBody(double bore, double wall, double hub, double rim, int arms, double armWidth, double corner) {
    /** The fewest arms that hold a rim. */
    public static final int FEWEST_ARMS = 3;

    /**
     * Checks what does not depend on the teeth.
     *
     * @throws ToothLimitException if a figure is out of its range
     */
    public WheelBody {
        if (!(bore > 0)) {
            throw ToothLimitException.below("bore of a wheel", bore, 0.1, "mm");
        }
        if (!(wall > 0)) {
            throw ToothLimitException.below("wall around the bore of a wheel", wall, 0.1, "mm");
        }
        if (arms != 0 && arms < FEWEST_ARMS) {
            throw ToothLimitException.below("number of arms of a wheel", arms, FEWEST_ARMS, "");
        }
        if (arms != 0 && !(hub >= bore + 2 * wall)) {
            throw ToothLimitException.below("hub of a wheel", hub, bore + 2 * wall, "mm");
        }
        if (arms != 0 && !(corner > 0)) {
            throw ToothLimitException.below("corner radius of a wheel's windows", corner, 0.1, "mm");
        }
    }

    /**
     * A solid disc.
     *
     * @param bore diameter of the bore as printed, mm
     * @param wall least material around the bore, mm
     */
    public static WheelBody solid(double bore, double wall) {
        return new WheelBody(bore, wall, 0, 0, 0, 0, 0);
    }

    /** This body with all edges drawn in by the spread of the first layer, mm. */
    WheelBody drawnIn(double flare) {
        return arms == 0
                ? solid(bore + 2 * flare, wall)
                : new WheelBody(
                        bore + 2 * flare, wall, hub - 2 * flare, rim - 2 * flare, arms, armWidth - 2 * flare, corner);
    }
}
