// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SwingEnergyTest {
    // P = ω E / Q with E = ½ m g L θ² (textbook, from memory); one beat is half a period, and 1 - cos differs by θ²/12.
    @ParameterizedTest
    @CsvSource({"1, 0.994, 1, 0.05, 5000", "0.15, 0.25, 0.5, 0.06, 400"})
    void the_power_is_the_energy_times_the_circular_frequency_over_the_quality(
            double mass, double length, double beat, double arc, double quality) {
        double moment = mass * 9.80665 * length;
        SwingEnergy energy = new SwingEnergy(moment, quality, arc);

        assertThat(energy.power(beat))
                .isCloseTo(Math.PI / beat * moment * arc * arc / 2 / quality, withinPercentage(100 * arc * arc / 11));
        assertThat(energy.lossPerBeat()).isCloseTo(energy.power(beat) * beat, within(1e-20));
    }

    @ParameterizedTest
    @CsvSource({"0, 100, 0.1", "-1, 100, 0.1", "1, 0.99, 0.1", "1, NaN, 0.1", "1, 100, -0.1", "1, 100, 3.2"})
    void a_swing_that_cannot_be_is_refused(double moment, double quality, double arc) {
        assertThatIllegalArgumentException().isThrownBy(() -> new SwingEnergy(moment, quality, arc));
    }

    // Kinds by experimenters' reports (see the enum): about 850 for a short heavy printed one, 18,500 and 21,399 free
    // on
    // a knife edge, "around 10,000" for a good clock pendulum, 110,000 at 40 mbar.
    @ParameterizedTest
    @CsvSource({
        "PRINTED_HEAVY, 850",
        "FREE_ON_KNIFE_EDGE, 18500",
        "FREE_ON_KNIFE_EDGE, 21399",
        "HEAVY_ON_SPRING, 10000",
        "IN_PARTIAL_VACUUM, 110000"
    })
    void the_range_of_a_kind_holds_what_was_reported_of_it(PendulumKind kind, double quality) {
        assertThat(quality).isBetween(kind.lowest(), kind.highest());
    }

    @ParameterizedTest
    @EnumSource(PendulumKind.class)
    void the_middle_of_a_range_lies_within_it(PendulumKind kind) {
        assertThat(kind.middle()).isStrictlyBetween(kind.lowest(), kind.highest());
    }
}
