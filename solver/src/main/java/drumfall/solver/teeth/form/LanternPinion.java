// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import drumfall.solver.teeth.flank.ArcPiece;
import drumfall.solver.teeth.flank.Flank;
import drumfall.solver.teeth.flank.ToothLimitException;

/**
 * A pinion of round pins between shrouds, at module 1; it may be driven, never drive.
 *
 * <p>E. Beckett, <i>A Rudimentary Treatise on Clocks, Watches and Bells</i>, 8th ed. 1903, pp. 279-281: lantern pins may
 * not drive.
 *
 * @param leafCount number of pins, at least 6
 * @param pinDiameter diameter of a pin, modules, 0 to 2; 0 only as the limit the theory starts from
 */
public record LanternPinion(int leafCount, double pinDiameter) implements ToothForm {
    /** The fewest pins offered (common practice, no source). */
    public static final int FEWEST = 6;

    /** The thickest pin, which leaves the wheel a tooth of a third of the pitch (common practice, no source). */
    public static final double THICKEST = 2;

    /**
     * Checks count and pin.
     *
     * @throws ToothLimitException if there are too few pins or they are too thick
     */
    public LanternPinion {
        if (leafCount < FEWEST) {
            throw ToothLimitException.below("leafCount of a lantern pinion", leafCount, FEWEST, "");
        }
        if (!(pinDiameter >= 0)) {
            throw ToothLimitException.below("pinDiameter of a lantern pinion", pinDiameter, 0, "modules");
        }
        if (!(pinDiameter <= THICKEST)) {
            throw ToothLimitException.above("pinDiameter of a lantern pinion", pinDiameter, THICKEST, "modules");
        }
    }

    @Override
    public int toothCount() {
        return leafCount;
    }

    @Override
    public boolean mayDrive() {
        return false;
    }

    /** The facing half of a pin, from its innermost to its outermost point. */
    @Override
    public Flank flank() {
        return Flank.of(new ArcPiece(pitchRadius(), 0, pinDiameter / 2, false, Math.PI, 0));
    }
}
