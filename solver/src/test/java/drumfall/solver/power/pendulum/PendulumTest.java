// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PendulumTest {
    private static final double INCH = 0.0254;

    // L = g / π² for a beat of one second at standard gravity, computed to 13 digits.
    @Test
    void a_seconds_pendulum_at_standard_gravity_is_just_under_a_metre() {
        double length = simple(Pendulum.STANDARD_GRAVITY).equivalentLength(1, 1);

        assertThat(length).isCloseTo(0.9936213855661, within(1e-12));
        assertThat(length).isCloseTo(0.994, within(0.001)); // general knowledge, from memory
    }

    // Beckett, 8th ed. 1903, pp. 35 and 39: the London seconds pendulum, 39.1393 in; the length implies g = 9.81175
    // m/s²,
    // given to five decimals, hence half of its last place over π².
    @Test
    void the_london_seconds_pendulum_has_its_legal_length() {
        double inches = simple(9.81175).equivalentLength(1, 1) / INCH;

        assertThat(inches).isCloseTo(39.1393, within(0.000005 / Math.PI / Math.PI / INCH + 0.00005));
    }

    // Beckett, 8th ed. 1903, p. 36, lengths for beats; feet and inches are written out in inches. The tolerance is half
    // the
    // last printed unit: an inch or half an inch for long pendulums, a tenth or a hundredth for short ones.
    @ParameterizedTest
    @CsvSource({
        "4, 626, 0.5",
        "3, 352, 0.5",
        "2.5, 245, 0.5",
        "2, 156.5, 0.25",
        "1.5, 88, 0.5",
        "1.25, 61, 0.5",
        "1, 39.14, 0.005",
        "0.75, 22, 0.5",
        "0.66666666666667, 17.4, 0.05",
        "0.5, 9.78, 0.0051",
    })
    void lengths_go_with_the_square_of_the_beat(double beat, double inches, double tolerance) {
        double gravity = 39.14 * INCH * Math.PI * Math.PI;

        assertThat(simple(gravity).equivalentLength(beat, 1) / INCH).isCloseTo(inches, within(tolerance));
    }

    // Normal gravity of WGS 84 by latitude, from the formula of Somigliana as many published programs quote it; the
    // lengths
    // are g / π² to a micrometre.
    @ParameterizedTest
    @CsvSource({
        "9.7803253359, 0.990954",
        "9.806197769, 0.993576",
        "9.812033575, 0.994167",
        "9.832184938, 0.996209",
    })
    void the_seconds_pendulum_grows_with_gravity_towards_the_pole(double gravity, double length) {
        assertThat(simple(gravity).equivalentLength(1, 1)).isCloseTo(length, within(1e-6));
    }

    // Derham, The Artificial Clock-Maker, 1696: ch. V, 153 swings a minute go with six inches (23409 L = 141120, 6.03);
    // ch. X pp. 115-117, trains of 9100, 9000 and 9405 beats an hour with pendulums of about six inches. His seconds
    // pendulum is 39.2 in; the further digits are recomputed from his rule.
    @ParameterizedTest
    @CsvSource({"9180, 6.028", "9100, 6.135", "9000, 6.272", "9405, 5.743"})
    void derhams_short_pendulums_follow_from_his_seconds_pendulum(double beatsPerHour, double inches) {
        double gravity = 39.2 * INCH * Math.PI * Math.PI;

        assertThat(simple(gravity).equivalentLength(3600 / beatsPerHour, 1) / INCH)
                .isCloseTo(inches, within(0.0006));
    }

    // Beckett, 8th ed. 1903, pp. 37-38: effective length is k² / h. Rod and bob are cut into 100,000 pieces and summed,
    // which is exact to about 1e-10.
    @ParameterizedTest
    @CsvSource({"0.15, 0.02, 0.25", "1, 0.5, 1", "0.05, 0.2, 0.3", "2, 0, 0.994"})
    void rod_and_bob_together_swing_like_the_equivalent_length(double bob, double rod, double length) {
        Pendulum pendulum = new Pendulum(bob, rod, 400, Pendulum.STANDARD_GRAVITY);
        double distance = pendulum.bobDistance(length);
        double inertia = bob * distance * distance;
        double moment = bob * distance;
        int pieces = 100_000;
        for (int i = 0; i < pieces; i++) {
            double place = distance * (i + 0.5) / pieces;
            inertia += rod / pieces * place * place;
            moment += rod / pieces * place;
        }

        assertThat(inertia / moment).isCloseTo(length, within(1e-9));
        assertThat(pendulum.massMoment(length)).isCloseTo(moment, within(1e-9));
    }

    // P = ω E / Q with E = ½ m g L θ² (textbook, from memory); one minus the cosine differs by θ²/12.
    @ParameterizedTest
    @CsvSource({"1, 0.05", "2.5, 0.1"})
    void the_energy_of_a_small_swing_is_half_its_weight_moment_times_the_square(double mass, double arc) {
        Pendulum pendulum = new Pendulum(mass, 0, 400, Pendulum.STANDARD_GRAVITY);
        double moment = pendulum.massMoment(0.9) * pendulum.gravity();

        assertThat(pendulum.energy(moment, arc))
                .isCloseTo(mass * 9.80665 * 0.9 * arc * arc / 2, withinPercentage(100 * arc * arc / 11));
        // An eighth of a turn, by the cosine itself.
        assertThat(pendulum.energy(1, Math.PI / 3)).isCloseTo(0.5, within(1e-15));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0  | 0.1  | 400 | 9.8 | The bobMass (0.0 kg) of a pendulum must be more than 0.0 kg. Maybe 1.0E-6 kg.
            -1 | 0    | 400 | 9.8 | The bobMass (-1.0 kg) of a pendulum must be more than 0.0 kg. Maybe 1.0E-6 kg.
            1  | -0.1 | 400 | 9.8 | The rodMass (-0.1 kg) of a pendulum must be at least 0.0 kg. Maybe 0.0 kg.
            1  | 0.1  | 0.5 | 9.8 | The quality (0.5) of a pendulum must be at least 1.0. Maybe 1.0.
            1  | 0.1  | NaN | 9.8 | The quality (NaN) of a pendulum must be at least 1.0. Maybe 1.0.
            1  | 0.1  | 400 | 0   | The gravity (0.0 m/s²) of a pendulum must be more than 0.0 m/s². Maybe 1.0E-6 m/s².
            """)
    void a_pendulum_that_cannot_be_is_refused_with_the_nearest_that_can(
            double bob, double rod, double quality, double gravity, String sentence) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Pendulum(bob, rod, quality, gravity))
                .withMessage(sentence);
        assertThat(new Pendulum(1e-6, 0, 1, 1e-6).quality()).isOne();
    }

    private static Pendulum simple(double gravity) {
        return new Pendulum(1, 0, 400, gravity);
    }
}
