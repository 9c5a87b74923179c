// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.train.DrumRun;
import drumfall.solver.train.Reeving;
import java.util.ArrayList;
import java.util.List;
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

    /**
     * The drums of a brief that wind the line in one layer, smallest first, each with every reeving.
     *
     * @param rules of the brief
     */
    static List<DrumChoice> all(HalfRules rules) {
        List<DrumChoice> drums = new ArrayList<>();
        for (BigFraction diameter : rules.choices.drumDiametersLeft()) {
            for (Reeving reeving : rules.choices.reevingsLeft()) {
                DrumRun run = rules.limits.drumRun(diameter, reeving);
                if (rules.limits.windsInOneLayer(run)) {
                    drums.add(of(rules, diameter, run));
                }
            }
        }
        return drums;
    }

    private static DrumChoice of(HalfRules rules, BigFraction diameter, DrumRun run) {
        double size = diameter.doubleValue();
        double[] hours = rules.limits.hoursPerTurn(run);
        double lineArm = rules.movement.lineArm(size);
        long mass = rules.movement.parts().drumMass(size);
        return new DrumChoice(
                diameter,
                run,
                hours[0],
                hours[1],
                lineArm,
                rules.limits.drumFlangeRadius(size),
                mass,
                DrumLine.of(rules, lineArm, mass, run.reeving()),
                run.turns(),
                rules.limits.ratchet().heaviest(lineArm, run.reeving()),
                rules.limits.heaviestCarried(lineArm, run.reeving()));
    }

    /** This drum as the best of itself. */
    BestDrum best() {
        return new BestDrum(line, lineArm, mass, carried);
    }

    /** Whether some number of hours within bounds may do. */
    boolean mayRun(double least, double most) {
        return most >= fewestHours * (1 - DOUBTFUL) && least <= mostHours * (1 + DOUBTFUL);
    }

    boolean surelyRuns(double hours) {
        return hours >= fewestHours * (1 + DOUBTFUL) && hours <= mostHours * (1 - DOUBTFUL);
    }
}
