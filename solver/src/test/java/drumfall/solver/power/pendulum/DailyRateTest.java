// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.power.pendulum.BodyShape.MassPoint;
import drumfall.solver.power.pendulum.BodyShape.Tube;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class DailyRateTest {
    private static final double KELVIN_PER_FAHRENHEIT = 1 / 1.8;

    // 86400 (1 - AGM(1, cos A/2)) with a second AGM of its own, to the printed digits; 2° is 6.58, and Beckett's "about
    // 6" (8th ed. 1903, pp. 34-35) its first digit. The form 86400 (T/T0 - 1) is another: 164.781 at 10°.
    @ParameterizedTest
    @CsvSource({
        "0.5, 0.4112",
        "1, 1.6449",
        "1.5, 3.7011",
        "2, 6.5797",
        "2.5, 10.2807",
        "3, 14.8042",
        "4, 26.3183",
        "5, 41.1217",
        "6, 59.2142",
        "8, 105.2651",
        "10, 164.4674",
        "15, 369.979"
    })
    void the_circular_error_is_the_slow_clocks_rate(double degrees, double seconds) {
        assertThat(DailyRate.circularError(Math.toRadians(degrees))).isCloseTo(seconds, within(0.0005));
    }

    // The slope of 5400 A²; the next term of the series is A²/4 of it or less.
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 2, 5})
    void the_circular_error_grows_with_twice_the_arc(double degrees) {
        double arc = Math.toRadians(degrees);

        assertThat(DailyRate.circularErrorSlope(arc))
                .isCloseTo(10_800 * arc, within(1e-5 + 10_800 * arc * arc * arc / 4));
    }

    @Test
    void a_larger_arc_always_loses_more() {
        double before = -1;
        for (double arc = 0; arc < 3; arc += 0.01) {
            double now = DailyRate.circularError(arc);
            assertThat(now).isGreaterThan(before);
            before = now;
        }
    }

    // Beckett, p. 50: dT = 43200 dl / l, the first term; for a thousandth the next is three quarters of a thousandth of
    // it.
    @Test
    void a_longer_pendulum_loses_half_its_share_of_the_day() {
        assertThat(DailyRate.ofLengths(1, 1.001)).isCloseTo(-43.2, withinPercentage(0.08));
        assertThat(DailyRate.ofLengths(1, 0.999)).isCloseTo(43.2, withinPercentage(0.08));
    }

    // A simple pendulum: ∂L/∂l is 1, so a turn gains 43200 · pitch / L.
    @Test
    void a_turn_of_the_nut_on_a_simple_pendulum_gains_its_pitch() {
        CompoundPendulum simple = new CompoundPendulum(new PendulumPart(1, new MassPoint(), 0.25), List.of());

        assertThat(DailyRate.perNutTurn(simple, 0.0005)).isCloseTo(43_200 * 0.0005 / 0.25, within(1e-10));
    }

    // Against two exact rates half a hundredth of a turn apart; the difference's own error is 1e-7 of it.
    @ParameterizedTest
    @CsvSource({"0.15, 0.25, 0.02, 0.3", "0.05, 0.2, 0.1, 0.5", "1, 0.9, 0.2, 1"})
    void a_turn_of_the_nut_does_what_lifting_the_bob_does(
            double bobMass, double distance, double rodMass, double rodLength) {
        CompoundPendulum pendulum = CompoundPendulumTest.pendulum(bobMass, distance, rodMass, rodLength);
        double share = 0.01;
        double pitch = 0.0007;
        double gain = DailyRate.ofLengths(
                pendulum.withBobLowered(share * pitch / 2).equivalentLength(),
                pendulum.withBobLowered(-share * pitch / 2).equivalentLength());

        assertThat(DailyRate.perNutTurn(pendulum, pitch)).isCloseTo(gain / share, withinPercentage(1e-3));
        assertThatIllegalArgumentException().isThrownBy(() -> DailyRate.perNutTurn(pendulum, 0));
    }

    // Beckett, p. 51: a small weight at half the length gains 10800 m / M a day; a ten-thousandth is small to 1e-4. At
    // l/3 and 2l/3 his own formula gives 9600 m / M: a second a day takes M/9600, not the M/7200 printed there.
    @ParameterizedTest
    @CsvSource({"0.5, 10800", "0.33333333333333, 9600", "0.66666666666667, 9600", "0, 0", "1, 0"})
    void a_small_weight_on_the_rod_gains_as_becketts_formula_says(double place, double perShare) {
        CompoundPendulum simple = new CompoundPendulum(new PendulumPart(2, new MassPoint(), 0.9), List.of());

        assertThat(DailyRate.ofAddedWeight(simple, 2e-4, 0.9 * place)).isCloseTo(perShare * 1e-4, within(2e-4));
    }

    @Test
    void a_weight_below_the_centre_of_oscillation_loses() {
        CompoundPendulum pendulum = CompoundPendulumTest.pendulum(0.15, 0.25, 0.02, 0.3);

        assertThat(DailyRate.ofAddedWeight(pendulum, 0.001, pendulum.equivalentLength() / 2))
                .isPositive();
        assertThat(DailyRate.ofAddedWeight(pendulum, 0.001, pendulum.equivalentLength() * 1.1))
                .isNegative();
    }

    // Encyclopaedia Britannica, 11th ed. 1911, art. CLOCK: steel 0.0000064 for 1 °F, and a second a day for about 4 °F.
    // The encyclopaedia article "Pendulum": 11.3e-6 for 1 °C is 0.27 s a day for 1 °F (not for 1 °C, as its sentence
    // reads), 16 s for 60 °F; 41e-6 for polylactide is recomputed.
    @ParameterizedTest
    @CsvSource({
        "11.52e-6, 4, 1.106, 0.0005",
        "11.3e-6, 1, 0.27, 0.005",
        "11.3e-6, 60, 16, 0.5",
        "41e-6, 1.8, 1.771, 0.0005"
    })
    void warmth_slows_the_clock(double expansion, double fahrenheit, double seconds, double tolerance) {
        assertThat(DailyRate.perKelvin(expansion) * fahrenheit * KELVIN_PER_FAHRENHEIT)
                .isCloseTo(seconds, within(tolerance));
    }

    // Beckett, pp. 52-53, printed for 1000 °F, here for a kelvin to the digits a handbook gives; deal by his figure
    // loses
    // 3.28 s a day for 33 °F, not the 1½ of p. 305.
    @ParameterizedTest
    @CsvSource({"STEEL, 11.5", "CAST_IRON, 11.9", "IRON, 12.6", "BRASS, 18.0", "ZINC, 28.8", "LEAD, 29.7", "DEAL, 4.1"})
    void rods_expand_as_becketts_table_says(RodMaterial material, double perMillion) {
        assertThat(material.expansion() * 1e6).isCloseTo(perMillion, within(0.05));
    }

    @ParameterizedTest
    @EnumSource(RodMaterial.class)
    void no_rod_expands_by_more_than_a_tenth_of_a_thousandth(RodMaterial material) {
        assertThat(material.expansion()).isBetween(1e-6, 1e-4);
    }

    @Test
    void a_bob_that_grows_like_its_rod_changes_nothing_of_the_plain_rule() {
        double steel = RodMaterial.STEEL.expansion();

        assertThat(DailyRate.perKelvinOnFoot(bobOf(0.3), steel, steel))
                .isCloseTo(DailyRate.perKelvin(steel), within(1e-12));
    }

    // Against the same pendulum built anew, ten kelvin warmer: rod to the nut, bob on its foot, bob grown. The rate
    // itself
    // is straight to α ΔT, 3e-4.
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.3, 0.9})
    void a_bob_on_its_foot_rises_as_it_warms(double height) {
        double kelvin = 10;
        double rod = RodMaterial.STEEL.expansion() * kelvin;
        double zinc = RodMaterial.ZINC.expansion() * kelvin;
        CompoundPendulum cold = bobOf(height);
        double foot = (1 + height / 2) * (1 + rod);
        CompoundPendulum warm = new CompoundPendulum(
                new PendulumPart(
                        5, new Tube(height * (1 + zinc), 0.02 * (1 + zinc), 0), foot - height / 2 * (1 + zinc)),
                List.of());

        assertThat(DailyRate.perKelvinOnFoot(cold, RodMaterial.STEEL.expansion(), RodMaterial.ZINC.expansion()))
                .isCloseTo(
                        -DailyRate.ofLengths(cold.equivalentLength(), warm.equivalentLength()) / kelvin, within(3e-4));
    }

    @Test
    void a_zinc_bob_on_its_foot_compensates_part_of_a_steel_rod() {
        double steel = RodMaterial.STEEL.expansion();

        assertThat(DailyRate.perKelvinOnFoot(bobOf(0.9), steel, RodMaterial.ZINC.expansion()))
                .isPositive()
                .isLessThan(DailyRate.perKelvin(steel));
    }

    private static CompoundPendulum bobOf(double height) {
        return new CompoundPendulum(new PendulumPart(5, new Tube(height, 0.02, 0), 1), List.of());
    }
}
