// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.display;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.ratio.RatioException;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The smallest error of a display that its reader can see.
 *
 * @param step a time of the cycle shown, such as a day of the moon's age, or an angle of the hand or disc; positive
 */
public record Resolution(Quantity step) {
    private static final int DEGREES_PER_TURN = 360;

    /**
     * Checks the step.
     *
     * @throws RatioException if the step is neither a time nor an angle, or is not positive
     */
    public Resolution {
        if (step.dimension() != Dimension.TIME && step.dimension() != Dimension.ANGLE) {
            throw RatioException.refused("resolution", step, "be a time or an angle", "write 1 d or 1 deg");
        }
        if (step.exact().signum() <= 0) {
            throw RatioException.refused("resolution", step, "be more than 0", "write 1 d or 1 deg");
        }
    }

    /** The step in seconds of the cycle shown, exact; radians as exact as quantities hold them. */
    public BigFraction seconds(Display display) {
        return step.dimension() == Dimension.TIME
                ? step.exact()
                : step.exact().divide(DEGREES_PER_TURN).multiply(display.secondsPerTurn());
    }
}
