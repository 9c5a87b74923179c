// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

import java.util.OptionalDouble;

/**
 * How a pendulum rings down: {@code A' = -δ A - c} for each period, a viscous decay and a Coulomb one together.
 *
 * <p>Uncertainties are standard deviations from the scatter of the readings; few or short readings that cannot tell the two
 * decays apart show it by large ones. The law holds for small arcs: at a semi-arc {@code A} the viscous share itself is off
 * by about {@code A²/16}, which the fit takes for Coulomb decay, a per cent or less of a usual one at 4&deg;.
 *
 * @param startArc arc at the first reading, rad
 * @param viscousDecay {@code δ}, share of the arc lost in a period
 * @param viscousDeviation standard deviation of it
 * @param coulombDecay {@code c}, rad lost in a period whatever the arc
 * @param coulombDeviation standard deviation of it, rad
 * @param scatter standard deviation of one reading, rad
 */
public record RingDownFit(
        double startArc,
        double viscousDecay,
        double viscousDeviation,
        double coulombDecay,
        double coulombDeviation,
        double scatter) {
    /** Standard deviations by which a decay must differ from nothing to count as seen; common practice, no source. */
    private static final double SEEN = 2;

    /** Quality factor of the viscous part, {@code Q = π / δ}; empty if the readings show no viscous decay. */
    public OptionalDouble quality() {
        return viscousDecay > 0 ? OptionalDouble.of(Math.PI / viscousDecay) : OptionalDouble.empty();
    }

    /** Standard deviation of {@link #quality()}, {@code Q σ_δ / δ}; empty where that is. */
    public OptionalDouble qualityDeviation() {
        return viscousDecay > 0
                ? OptionalDouble.of(Math.PI / viscousDecay * viscousDeviation / viscousDecay)
                : OptionalDouble.empty();
    }

    /** Whether the viscous decay stands out of its uncertainty. */
    public boolean viscousSeen() {
        return viscousDecay > SEEN * viscousDeviation;
    }

    /** Whether the Coulomb decay stands out of its uncertainty. */
    public boolean coulombSeen() {
        return coulombDecay > SEEN * coulombDeviation;
    }

    /**
     * Coulomb torque at the suspension, {@code M = c m g h / 4}: a period crosses four semi-arcs.
     *
     * @param weightMoment {@code m_tot g h_cm}, N m, positive
     * @return N m; negative if the readings curve the other way
     */
    public double coulombTorque(double weightMoment) {
        return coulombDecay * weightMoment / 4;
    }

    /**
     * Standard deviation of {@link #coulombTorque}, N m.
     *
     * @param weightMoment {@code m_tot g h_cm}, N m, positive
     */
    public double coulombTorqueDeviation(double weightMoment) {
        return coulombDeviation * weightMoment / 4;
    }
}
