// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.power.pendulum.FiniteArc;
import drumfall.solver.power.pendulum.RingDown;
import drumfall.solver.power.pendulum.RingDown.Reading;
import drumfall.solver.power.pendulum.RingDownFit;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The balance of a beat against the same pendulum and pallets stepped through time. */
class SteadySwingTest {
    // 0.1 %: the balance takes the viscous loss as that of a sinusoid, which differs by A²/8 and by the decay within a
    // beat, π/Q times the lag of the impulse. Ten memories of the pendulum leave e^-10 of the five per cent it starts
    // off by.
    @ParameterizedTest
    @CsvSource({
        "30, 4, 1, 1.5, 0.2, 2e-6, 400, 0.012",
        "30, 4, 1, 1.5, 0.1, 0, 250, 0.02",
        "15, 3, 0.5, 2, 0.2, 5e-6, 800, 0.01",
        "24, 2, 0.5, 1, 0.15, 2e-6, 600, 0.005",
    })
    void the_arc_settles_where_the_balance_says(
            int teeth,
            double lift,
            double lock,
            double drop,
            double friction,
            double arbor,
            double quality,
            double reserve) {
        Deadbeat escapement = Escapements.deadbeat(teeth, lift, lock, drop, friction, arbor);
        DeadbeatBalance balance = new DeadbeatBalance(escapement, 0.4, quality);
        double arc = balance.leastArc() + reserve;
        WedgeSwing swing = new WedgeSwing(escapement, 0.4, 0.25, quality, balance.torqueFor(arc));

        double settled = swing.settled(1.05 * arc, (int) (10 * quality / Math.PI));

        assertThat(settled).isCloseTo(arc, withinPercentage(0.1));
    }

    // The exact period of a finite arc, against the free pendulum stepped from rest to rest: 1e-9, that of the steps.
    @ParameterizedTest
    @CsvSource({"1", "5", "15", "45", "90", "150"})
    void a_free_swing_lasts_as_long_as_its_arc_says(double degrees) {
        double arc = Math.toRadians(degrees);
        ODEStateAndDerivative end =
                SteppedMotion.run(new double[] {-arc, 0}, 0.1, s -> new double[] {s[1], -Math.sin(s[0])}, s -> s[1]);

        assertThat(end.getTime()).isCloseTo(Math.PI * FiniteArc.periodRatio(arc), withinPercentage(1e-7));
    }

    // A pendulum with both dampings rings down; the fit finds them again. A finite arc loses A²/16 less or more than
    // its
    // viscous share; that part, δ A³ / 16, looks like Coulomb friction to the fit: 0.06 % of c here, and eight times
    // that
    // from twice the arc. With the decay within a beat, π/Q, 0.5 % holds both.
    @Test
    void a_ring_down_gives_back_the_dampings_it_was_made_with() {
        double quality = 400;
        double weightMoment = 0.4;
        double coulomb = 5e-6;
        List<Reading> readings = new ArrayList<>();
        double[] state = {-0.04, 0};
        for (int half = 0; half <= 200; half++) {
            if (half % 20 == 0) {
                readings.add(new Reading(half / 2.0, -state[0]));
            }
            // Unit inertia: all torques over the moment of inertia, 0.4 / 40 kg m².
            double over = weightMoment / 40;
            state = SteppedMotion.run(
                            state,
                            0.05,
                            s -> new double[] {
                                s[1], -Math.sqrt(40) / quality * s[1] - 40 * Math.sin(s[0]) - coulomb / over
                            },
                            s -> s[1])
                    .getPrimaryState();
            state = new double[] {-state[0], 0};
        }
        RingDownFit fit = new RingDown(readings).fit();

        assertThat(fit.quality().orElseThrow()).isCloseTo(quality, withinPercentage(0.5));
        assertThat(fit.coulombTorque(weightMoment)).isCloseTo(coulomb, withinPercentage(0.5));
    }
}
