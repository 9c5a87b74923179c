// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import java.util.List;

/**
 * The best of some drums with one reeving, each figure on its own.
 *
 * @param line no drum's weight is less
 * @param lineArm arm of the line about the axis, m; the least
 * @param mass µg; the least
 * @param carried heaviest weight that ratchet and line carry, kg; the most
 */
record BestDrum(DrumLine line, double lineArm, long mass, double carried) {
    /**
     * The best of drums.
     *
     * @param drums at least one
     */
    static BestDrum of(List<DrumChoice> drums) {
        DrumLine line = drums.get(0).line();
        double arm = drums.get(0).lineArm();
        long mass = drums.get(0).mass();
        double carried = drums.get(0).carried();
        for (DrumChoice drum : drums) {
            line = line.least(drum.line());
            arm = Math.min(arm, drum.lineArm());
            mass = Math.min(mass, drum.mass());
            carried = Math.max(carried, drum.carried());
        }
        return new BestDrum(line, arm, mass, carried);
    }
}
