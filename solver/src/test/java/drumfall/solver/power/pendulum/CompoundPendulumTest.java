// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.pendulum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.power.pendulum.BodyShape.FacingCylinder;
import drumfall.solver.power.pendulum.BodyShape.MassPoint;
import drumfall.solver.power.pendulum.BodyShape.ThinRod;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompoundPendulumTest {
    private static final int SAMPLES = "full".equals(System.getProperty("drumfall.samples")) ? 5000 : 200;

    // A uniform rod swings about its end like a simple pendulum of two thirds of its length (any textbook; from
    // memory).
    @Test
    void a_bare_rod_swings_like_two_thirds_of_its_length() {
        CompoundPendulum rod = new CompoundPendulum(new PendulumPart(0.3, new ThinRod(0.9), 0.45), List.of());

        assertThat(rod.equivalentLength()).isCloseTo(0.6, within(1e-15));
    }

    // Beckett, 8th ed. 1903, pp. 37-38: k² = k₁² + h² and the effective length is k² / h.
    @Test
    void the_effective_length_is_the_square_of_gyration_over_the_centres_distance() {
        CompoundPendulum pendulum = pendulum(0.15, 0.25, 0.02, 0.30);
        double square = pendulum.inertia() / pendulum.mass();

        assertThat(pendulum.equivalentLength()).isCloseTo(square / pendulum.centreOfMass(), within(1e-15));
    }

    // The simpler pendulum of the package, thin rod to the bob and a small bob, is a special case.
    @ParameterizedTest
    @CsvSource({"0.25, 0.15, 0.02", "1, 1, 0.5", "0.994, 2, 0.001"})
    void a_small_bob_on_a_rod_to_its_centre_hangs_where_the_simple_formula_says(double length, double bob, double rod) {
        CompoundPendulum found =
                BobPlace.onRodToTheBob(length, bob, new MassPoint(), rod).orElseThrow();
        Pendulum simple = new Pendulum(bob, rod, 400, Pendulum.STANDARD_GRAVITY);

        assertThat(found.bob().centre()).isCloseTo(simple.bobDistance(length), within(1e-14));
        assertThat(found.massMoment()).isCloseTo(simple.massMoment(length), within(1e-14));
        assertThat(found.equivalentLength()).isCloseTo(length, within(1e-14));
    }

    @Test
    void a_bob_is_placed_so_that_the_whole_has_the_length_asked_for() {
        Random random = new Random(11);
        int placed = 0;
        for (int i = 0; i < SAMPLES; i++) {
            double length = 0.1 + random.nextDouble();
            PendulumPart rod = rod(0.001 + random.nextDouble() * 0.1, 0.1 + random.nextDouble());
            var found = BobPlace.of(
                    length,
                    0.05 + random.nextDouble(),
                    new FacingCylinder(0.01 + random.nextDouble() * 0.05),
                    List.of(rod));
            found.ifPresent(pendulum -> assertThat(pendulum.equivalentLength()).isCloseTo(length, within(1e-12)));
            placed += found.isPresent() ? 1 : 0;
        }
        assertThat(placed).isGreaterThan(SAMPLES / 2);
    }

    @Test
    void no_place_of_the_bob_makes_a_long_heavy_rod_swing_fast() {
        assertThat(BobPlace.of(0.05, 0.1, new MassPoint(), List.of(rod(1, 1)))).isEmpty();
        assertThat(BobPlace.onRodToTheBob(0.05, 0.1, new FacingCylinder(0.1), 0.01))
                .isEmpty();
    }

    @Test
    void a_place_is_found_down_to_the_shortest_length_and_no_further() {
        FacingCylinder disc = new FacingCylinder(0.05);
        List<PendulumPart> fixed = List.of(rod(0.03, 0.4));
        double beside = BobPlace.shortest(0.1, disc, fixed);
        double below = BobPlace.shortestOnRodToTheBob(0.1, disc, 0.03);

        assertThat(BobPlace.of(beside * 1.0001, 0.1, disc, fixed)).isPresent();
        assertThat(BobPlace.of(beside * 0.9999, 0.1, disc, fixed)).isEmpty();
        assertThat(BobPlace.onRodToTheBob(below * 1.0001, 0.1, disc, 0.03)).isPresent();
        assertThat(BobPlace.onRodToTheBob(below * 0.9999, 0.1, disc, 0.03)).isEmpty();
    }

    // The derivative against a difference of two equivalent lengths a hundredth of a millimetre apart: its own error is
    // of the order of 1e-9, and rounding adds 1e-11.
    @Test
    void the_length_grows_with_the_bobs_travel_as_the_derivative_says() {
        Random random = new Random(12);
        double step = 1e-5;
        for (int i = 0; i < SAMPLES; i++) {
            CompoundPendulum pendulum = pendulum(
                    0.05 + random.nextDouble(),
                    0.2 + random.nextDouble() * 0.5,
                    random.nextDouble() * 0.1 + 0.001,
                    0.2 + random.nextDouble() * 0.6);
            double difference = pendulum.withBobLowered(step).equivalentLength()
                    - pendulum.withBobLowered(-step).equivalentLength();

            assertThat(pendulum.lengthPerBobTravel()).isCloseTo(difference / (2 * step), within(1e-8));
        }
    }

    // Rod of 1 kg with its middle 0.2 m above the axis: a bob of 2 kg hangs it from 0.1 m on.
    @Test
    void a_pendulum_whose_weight_stands_above_its_axis_is_refused_with_the_place_where_it_hangs() {
        PendulumPart above = new PendulumPart(1, new ThinRod(0.4), -0.2);
        PendulumPart bob = new PendulumPart(2, new MassPoint(), 0.09);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CompoundPendulum(bob, List.of(above)))
                .withMessage("The centre (0.09 m) of the bob must be more than 0.1 m. Maybe 0.100001 m.");
        assertThat(new CompoundPendulum(bob.lowered(0.010001), List.of(above)).massMoment())
                .isPositive();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0    | 0.1      | The mass (0.0 kg) of a part of the pendulum must be more than 0.0 kg. Maybe 1.0E-6 kg.
            -0.1 | 0.1      | The mass (-0.1 kg) of a part of the pendulum must be more than 0.0 kg. Maybe 1.0E-6 kg.
            1    | Infinity | The centre (Infinity m) of a part of the pendulum must be finite. Maybe 0.0 m.
            """)
    void a_part_that_cannot_be_is_refused(double mass, double centre, String sentence) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PendulumPart(mass, new MassPoint(), centre))
                .withMessage(sentence);
        assertThatIllegalArgumentException().isThrownBy(() -> new PendulumPart(1, new MassPoint(), Double.NaN));
    }

    @Test
    void a_place_or_period_of_nothing_is_refused() {
        CompoundPendulum pendulum = pendulum(1, 0.3, 0.1, 0.4);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> pendulum.smallArcPeriod(0))
                .withMessage("The gravity (0.0 m/s²) of a pendulum must be more than 0.0 m/s². Maybe 1.0E-6 m/s².");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BobPlace.of(-0.3, 1, new MassPoint(), List.of()))
                .withMessageContaining("The equivalentLength (-0.3 m) of a pendulum must be more than 0.0 m.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BobPlace.onRodToTheBob(0.3, 0, new MassPoint(), 0.1))
                .withMessageContaining("The mass (0.0 kg) of a bob must be more than 0.0 kg.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BobPlace.onRodToTheBob(0.3, 1, new MassPoint(), 0))
                .withMessageContaining("The rodMass (0.0 kg) of a pendulum must be more than 0.0 kg.");
    }

    static PendulumPart rod(double mass, double length) {
        return new PendulumPart(mass, new ThinRod(length), length / 2);
    }

    static CompoundPendulum pendulum(double bobMass, double distance, double rodMass, double rodLength) {
        return new CompoundPendulum(
                new PendulumPart(bobMass, new FacingCylinder(0.03), distance), List.of(rod(rodMass, rodLength)));
    }
}
