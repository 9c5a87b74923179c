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
     * The best of drums that may run with some hours for a turn.
     *
     * @param drums with one reeving
     * @param fewest hours for a turn, roughly
     * @param most hours for a turn, roughly
     * @return the best; null if none may run
     */
    static BestDrum of(List<DrumChoice> drums, double fewest, double most) {
        BestDrum best = null;
        for (int i = 0; i < drums.size(); i++) {
            DrumChoice drum = drums.get(i);
            if (drum.mayRun(fewest, most)) {
                BestDrum alone = drum.best();
                best = best == null ? alone : best.and(alone);
            }
        }
        return best;
    }

    private BestDrum and(BestDrum other) {
        return new BestDrum(
                line.least(other.line),
                Math.min(lineArm, other.lineArm),
                Math.min(mass, other.mass),
                Math.max(carried, other.carried));
    }
}
