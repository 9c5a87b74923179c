// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.train.DrumRun;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a brief asks of the trains that one drum drives, reckoned once: the drums of a brief are few, their trains many.
 *
 * <p>A duration is the hours of a drum's turn times its turns; the limits on the duration, divided by the turns, are compared
 * with the hours, which says the same and multiplies no long fractions.
 */
final class DrumLimits {
    private final DrumRun run;
    private final BigFraction layerLength;
    private final boolean windsInOneLayer;
    private final BigFraction fewestHoursPerTurn;
    private final BigFraction mostHoursPerTurn;

    /**
     * The limits of a drum.
     *
     * @param brief the brief
     * @param run its drum
     * @param hoursAtLeast shortest duration, h
     * @param hoursAtMost longest duration, h
     */
    DrumLimits(Brief brief, DrumRun run, BigFraction hoursAtLeast, BigFraction hoursAtMost) {
        this.run = run;
        this.layerLength = run.layerLength(brief.drum().turnSpacing().exact());
        this.windsInOneLayer = layerLength.compareTo(brief.drum().length().exact()) <= 0;
        this.fewestHoursPerTurn = hoursAtLeast.divide(run.turnsRoundedDown());
        this.mostHoursPerTurn = hoursAtMost.divide(run.turnsRoundedUp());
    }

    DrumRun run() {
        return run;
    }

    /** Drum length that one layer takes, m. */
    BigFraction layerLength() {
        return layerLength;
    }

    boolean windsInOneLayer() {
        return windsInOneLayer;
    }

    boolean runsLongEnough(BigFraction hoursPerTurn) {
        return hoursPerTurn.compareTo(fewestHoursPerTurn) >= 0;
    }

    boolean runsNotTooLong(BigFraction hoursPerTurn) {
        return hoursPerTurn.compareTo(mostHoursPerTurn) <= 0;
    }
}
