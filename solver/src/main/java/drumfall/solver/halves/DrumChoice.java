// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.train.DrumRun;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A drum of the brief that winds the line in one layer.
 *
 * @param diameter bare diameter, m
 * @param run drum, line and fall
 * @param fewestHours hours for a turn that give the shortest duration allowed
 * @param mostHours hours for a turn that give the longest duration allowed
 * @param lineArm arm of the line about the axis, m
 * @param flangeRadius m
 * @param mass µg
 * @param line weight by the torque on the drum arbor
 * @param turns turns in a full fall
 * @param held heaviest weight that the ratchet holds, kg
 * @param carried heaviest weight that ratchet and line carry, kg
 */
record DrumChoice(
        BigFraction diameter,
        DrumRun run,
        double fewestHours,
        double mostHours,
        double lineArm,
        double flangeRadius,
        long mass,
        DrumLine line,
        double turns,
        double held,
        double carried) {
    /** Closer than this to a limit only exact arithmetic decides; rounding is below a thousandth of it. */
    private static final double DOUBTFUL = 1e-12;

    /** Whether some number of hours within bounds may do. */
    boolean mayRun(double least, double most) {
        return most >= fewestHours * (1 - DOUBTFUL) && least <= mostHours * (1 + DOUBTFUL);
    }

    boolean surelyRuns(double hours) {
        return hours >= fewestHours * (1 + DOUBTFUL) && hours <= mostHours * (1 - DOUBTFUL);
    }
}
