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

    // Without friction at pallets and pallet arbor the memory is the pendulum's own, Q/π beats; each friction alone
    // shortens it.
    @ParameterizedTest
    @CsvSource({"0, 0, false", "0.2, 0, true", "0, 2e-6, true", "0.2, 2e-6, true"})
    void the_pendulum_remembers_q_over_pi_beats_unless_something_rubs(double friction, double arbor, boolean shorter) {
        DeadbeatForm form = new DeadbeatForm(
                0.030,
                Math.toRadians(95),
                Math.toRadians(4),
                Math.toRadians(1),
                Math.toRadians(1.5),
                friction,
                arbor,
                0.03);
        Pendulum pendulum = new Pendulum(1, 0.1, 1000, Pendulum.STANDARD_GRAVITY);
        double memory = new HeldArc(form.with(30), pendulum, 0.02).need(0.5).memory();

        if (shorter) {
            assertThat(memory).isLessThan(0.999 * 1000 / Math.PI * 0.5);
        } else {
            assertThat(memory).isCloseTo(1000 / Math.PI * 0.5, within(1e-9));
        }
    }

    // The memory against pendulum and pallets stepped through time: of an arc a little too wide each beat leaves a
    // share
    // e^(-beat/τ). No formula of the balance is used on that side. 0.1 %: impulse and rubbing come at their own places
    // within the beat, which moves that share by no more than the square of what a beat takes, 1 % at most here; the
    // viscous loss is not quite that of a sinusoid, A²/8. The fourth has nothing but the pallet arbor to rub.
    @ParameterizedTest
    @CsvSource({
        "30, 4, 1, 1.5, 0.2, 2e-5, 4000, 0.012",
        "15, 3, 0.5, 2, 0.1, 1e-4, 3000, 0.02",
        "24, 2, 0.5, 1, 0.15, 0, 5000, 0.005",
        "30, 4, 1, 1.5, 0, 1e-4, 4000, 0.012",
    })
    void a_beat_leaves_of_a_deviation_what_the_memory_says(
            int teeth,
            double lift,
            double lock,
            double drop,
            double friction,
            double arbor,
            double quality,
            double reserve) {
        Deadbeat escapement = Escapements.deadbeat(teeth, lift, lock, drop, friction, arbor);
        Pendulum pendulum = new Pendulum(0.16, 0, quality, Pendulum.STANDARD_GRAVITY);
        EscapeNeed need = new HeldArc(escapement, pendulum, reserve).need(0.5);
        double weightMoment = pendulum.massMoment(need.equivalentLength()) * pendulum.gravity();
        WedgeSwing swing = new WedgeSwing(escapement, weightMoment, need.equivalentLength(), quality, need.torque());
        double off = need.semiArc() / 50;
        double left = (swing.next(need.semiArc() + off) - swing.next(need.semiArc() - off)) / (2 * off);

        assertThat(-0.5 / Math.log(left)).isCloseTo(need.memory(), withinPercentage(0.1));
    }

    private static HeldArc held(double quality, double reserve) {
        return new HeldArc(FORM.with(30), new Pendulum(1, 0.1, quality, Pendulum.STANDARD_GRAVITY), reserve);
    }
}
