// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.train;

import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The drum, its line and its fall: turns in a full fall, duration, and the length the line takes up.
 *
 * <p>The line winds in one layer; the effective diameter is the drum's plus one line (Goodrich, <i>The Modern Clock</i>,
 * 1905, ch. XV).
 *
 * <p>The bounds on the turns are fractions of some hundred digits, asked for with every train rated, so they are reckoned
 * once.
 */
public final class DrumRun {
    private static final int SAFETY_TURNS = 2;

    private final BigFraction fall;
    private final BigFraction drumDiameter;
    private final BigFraction lineDiameter;
    private final Reeving reeving;
    private final BigFraction turnsTimesPi;
    private final int hash;
    /** Reckoned when first asked for; threads that race reckon the same. */
    private BigFraction turnsRoundedDown;

    private BigFraction turnsRoundedUp;

    /**
     * A drum and its fall.
     *
     * @param fall height the weight may descend, m, positive
     * @param drumDiameter diameter of the bare drum, m, positive
     * @param lineDiameter diameter of the line, m, not negative
     * @param reeving how the line carries the weight
     * @throws IllegalArgumentException if the fall or the drum is not positive, or the line is negative
     */
    public DrumRun(BigFraction fall, BigFraction drumDiameter, BigFraction lineDiameter, Reeving reeving) {
        if (fall.signum() <= 0 || drumDiameter.signum() <= 0 || lineDiameter.signum() < 0) {
            throw new IllegalArgumentException(
                    "The fall (%s m) and the drum diameter (%s m) must be more than 0, the line diameter (%s m) at least 0."
                            .formatted(fall, drumDiameter, lineDiameter));
        }
        this.fall = fall;
        this.drumDiameter = drumDiameter;
        this.lineDiameter = lineDiameter;
        this.reeving = Objects.requireNonNull(reeving);
        this.turnsTimesPi = fall.multiply(reeving.falls()).divide(effectiveDiameter());
        this.hash = Objects.hash(fall, drumDiameter, lineDiameter, reeving);
    }

    /** Height the weight may descend, m. */
    public BigFraction fall() {
        return fall;
    }

    /** Diameter of the bare drum, m. */
    public BigFraction drumDiameter() {
        return drumDiameter;
    }

    /** Diameter of the line, m. */
    public BigFraction lineDiameter() {
        return lineDiameter;
    }

    /** How the line carries the weight. */
    public Reeving reeving() {
        return reeving;
    }

    /** Effective diameter {@code D + u} in metres, exact. */
    public BigFraction effectiveDiameter() {
        return drumDiameter.add(lineDiameter);
    }

    /** Turns in a full fall times &pi;, {@code k F / (D + u)}: the exact part of the number of turns. */
    public BigFraction turnsTimesPi() {
        return turnsTimesPi;
    }

    /** Turns of the drum in a full fall, {@code n_d = k F / (π (D + u))}. */
    public double turns() {
        return turnsTimesPi().doubleValue() / Math.PI;
    }

    /**
     * A number of turns that is surely not more than the true one.
     *
     * @return a lower bound, 50 decimals tight
     */
    public BigFraction turnsRoundedDown() {
        BigFraction known = turnsRoundedDown;
        if (known == null) {
            known = turnsTimesPi.divide(PiBounds.ABOVE);
            turnsRoundedDown = known;
        }
        return known;
    }

    /**
     * A number of turns that is surely not less than the true one.
     *
     * @return an upper bound, 50 decimals tight
     */
    public BigFraction turnsRoundedUp() {
        BigFraction known = turnsRoundedUp;
        if (known == null) {
            known = turnsTimesPi.divide(PiBounds.BELOW);
            turnsRoundedUp = known;
        }
        return known;
    }

    /**
     * Hours that a full fall surely lasts.
     *
     * @param hoursPerDrumTurn hours for one turn of the drum, {@code R_up}
     * @return a lower bound, 50 decimals tight
     */
    public BigFraction hoursRoundedDown(BigFraction hoursPerDrumTurn) {
        return hoursPerDrumTurn.multiply(turnsRoundedDown());
    }

    /**
     * Hours that a full fall surely does not exceed.
     *
     * @param hoursPerDrumTurn hours for one turn of the drum, {@code R_up}
     * @return an upper bound, 50 decimals tight
     */
    public BigFraction hoursRoundedUp(BigFraction hoursPerDrumTurn) {
        return hoursPerDrumTurn.multiply(turnsRoundedUp());
    }

    /**
     * Drum length that one layer takes, with two safety turns that never leave the drum:
     * {@code (n_d + 2) s u + u}, rounded up.
     *
     * @param spacing pitch of the turns over the line diameter, {@code s}, common practice 1.05 to 1.1, no source
     * @return metres, an upper bound 50 decimals tight
     */
    public BigFraction layerLength(BigFraction spacing) {
        return turnsRoundedUp()
                .add(SAFETY_TURNS)
                .multiply(spacing)
                .multiply(lineDiameter)
                .add(lineDiameter);
    }

    /**
     * Length of line to cut: {@code k (F + top lead) + 2 π (D + u) + tie-off}.
     *
     * @param topLead line above the weight when it is fully wound, m
     * @param tieOff line for knots and fixings, m
     * @return metres
     */
    public double lineLength(double topLead, double tieOff) {
        return reeving.falls() * (fall.doubleValue() + topLead)
                + SAFETY_TURNS * Math.PI * effectiveDiameter().doubleValue()
                + tieOff;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DrumRun run
                && hash == run.hash
                && fall.equals(run.fall)
                && drumDiameter.equals(run.drumDiameter)
                && lineDiameter.equals(run.lineDiameter)
                && reeving == run.reeving;
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
