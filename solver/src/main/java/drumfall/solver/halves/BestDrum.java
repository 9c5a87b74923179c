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
 */
record BestDrum(DrumLine line, double lineArm, long mass) {
    /**
     * The best of drums.
     *
     * @param drums at least one
     */
    static BestDrum of(List<DrumChoice> drums) {
        DrumLine line = drums.get(0).line();
        double arm = drums.get(0).lineArm();
        long mass = drums.get(0).mass();
        for (DrumChoice drum : drums) {
            line = line.least(drum.line());
            arm = Math.min(arm, drum.lineArm());
            mass = Math.min(mass, drum.mass());
        }
        return new BestDrum(line, arm, mass);
    }
}
