// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.power.pendulum.Pendulum;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeldArcTest {
    private static final DeadbeatForm FORM = new DeadbeatForm(
            0.030, Math.toRadians(95), Math.toRadians(4), Math.toRadians(1), Math.toRadians(1.5), 0.2, 2e-6, 0.03);

    // An experimenter's ring-down (watchandclockforum.com): 135 cycles to lose the energy to 1/e, Q about 850; and the
    // standard result that N cycles to half the amplitude mean Q = 4.5324 N. The energy falls by π/Q a beat; stepping
    // beat
    // by beat instead of smoothly shortens 270 beats by half of π/Q, 0.2 %.
    @ParameterizedTest
    @CsvSource({"848.23, 270, 0.36788", "4532.4, 2000, 0.25", "453.24, 200, 0.25"})
    void a_free_pendulum_rings_down_as_its_quality_says(double quality, int beats, double energyLeft) {
        Pendulum pendulum = new Pendulum(1, 0, quality, Pendulum.STANDARD_GRAVITY);
        HeldArc held = new HeldArc(FORM.with(30), pendulum, Math.toRadians(1));
        EscapeNeed need = held.need(1);
        double energy =
                pendulum.energy(pendulum.massMoment(need.equivalentLength()) * pendulum.gravity(), need.semiArc());
        double keptPerBeat = 1 - need.pendulumLoss() / energy;

        assertThat(Math.pow(keptPerBeat, beats)).isCloseTo(energyLeft, withinPercentage(100 * 2 * Math.PI / quality));
    }

    @Test
    void the_arc_kept_is_the_escape_angle_and_its_reserve() {
        assertThat(held(1000, 2e-2).arc()).isCloseTo(Math.toRadians(2.5) + 2e-2, within(1e-15));
    }

    // Without friction at the pallets the memory is the pendulum's own, Q/π beats; with it the locking faces damp as
    // well
    // and the memory is shorter.
    @Test
    void the_pendulum_remembers_q_over_pi_beats_unless_the_pallets_rub() {
        DeadbeatForm smooth = new DeadbeatForm(
                0.030, Math.toRadians(95), Math.toRadians(4), Math.toRadians(1), Math.toRadians(1.5), 0, 2e-6, 0.03);
        Pendulum pendulum = new Pendulum(1, 0.1, 1000, Pendulum.STANDARD_GRAVITY);

        assertThat(new HeldArc(smooth.with(30), pendulum, 0.02).need(0.5).memory())
                .isCloseTo(1000 / Math.PI * 0.5, within(1e-9));
        assertThat(held(1000, 0.02).need(0.5).memory()).isLessThan(1000 / Math.PI * 0.5);
    }

    private static HeldArc held(double quality, double reserve) {
        return new HeldArc(FORM.with(30), new Pendulum(1, 0.1, quality, Pendulum.STANDARD_GRAVITY), reserve);
    }
}
