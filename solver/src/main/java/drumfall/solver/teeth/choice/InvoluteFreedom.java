// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.choice;

import java.util.List;

/**
 * What may be chosen of an involute pair.
 *
 * @param pressureAngles pressure angles to try, degrees
 * @param followerShift profile shift of the follower, modules
 * @param shiftSum sum of both shifts, modules
 * @param driverAddendum height of the driver's tip above its pitch circle, modules
 * @param followerAddendum height of the follower's tip above its pitch circle, modules
 */
public record InvoluteFreedom(
        List<Double> pressureAngles,
        Range followerShift,
        Range shiftSum,
        Range driverAddendum,
        Range followerAddendum) {
    /** Everything free within what prints and runs well. */
    public static final InvoluteFreedom FREE = new InvoluteFreedom(
            List.of(20.0, 22.5, 25.0),
            new Range(-0.6, 0.7),
            new Range(-0.1, 0.4),
            new Range(0.1, 1.8),
            new Range(0.1, 1.8));

    /** Copies the list. */
    public InvoluteFreedom {
        pressureAngles = List.copyOf(pressureAngles);
    }
}
