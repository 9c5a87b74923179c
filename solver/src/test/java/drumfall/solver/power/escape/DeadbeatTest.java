// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.escape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.power.pendulum.Pendulum;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeadbeatTest {
    // Beckett, 8th ed. 1903, p. 97: nine and a half spaces of thirty between the dead faces, 1.54 of the wheel's
    // radius;
    // half of the last printed digit. The arbor is then 1.84 radii away, which is not a figure of the program.
    @Test
    void pallets_over_nine_and_a_half_spaces_of_thirty_lie_at_becketts_radius() {
        Deadbeat escapement = form(1, Math.toRadians(114), 4, 1, 1.5, 0.2).with(30);

        assertThat(escapement.wholeSpaces()).isEqualTo(9);
        assertThat(escapement.halfSpan()).isCloseTo(Math.toRadians(57), within(1e-12));
        assertThat(escapement.palletRadius()).isCloseTo(1.54, within(0.005));
    }

    // The largest half-odd number of spaces within the limit, also when the limit lies exactly on it.
    @ParameterizedTest
    @CsvSource({"30, 95, 7", "30, 90, 7", "30, 89.9, 6", "15, 95, 3", "12, 95, 2", "24, 114, 7", "4, 120, 0"})
    void pallets_embrace_the_most_spaces_the_limit_allows(int teeth, double spanLimit, int wholeSpaces) {
        assertThat(form(1, Math.toRadians(spanLimit), 4, 1, 1.5, 0.2)
                        .with(teeth)
                        .wholeSpaces())
                .isEqualTo(wholeSpaces);
    }

    // Beckett, p. 98: a total impulse of two degrees, each pallet escaping one degree from zero (dead on the corner, no
    // lock); 2° of 7 in are a quarter of an inch, printed to the hundredth.
    @Test
    void each_pallet_escapes_half_the_impulse_from_zero() {
        DeadbeatForm form = form(1, 1.6, 2, 0, 1, 0.2);

        assertThat(form.escapeAngle()).isCloseTo(Math.toRadians(1), within(1e-15));
        assertThat(form.lift() * 7).isCloseTo(0.25, within(0.006));
        assertThat(form(1, 1.6, 4, 1, 1, 0.2).escapeAngle()).isCloseTo(Math.toRadians(2.5), within(1e-15));
    }

    // M. Headrick, Clock and Watch Escapement Mechanics: ch. 10, a drop of one degree costs a wheel of 15 a twelfth and
    // one of
    // 30 a sixth, 8.33 % between them; a modified Graham of 15 teeth turns 4° + 6° in work and 2° in drop.
    @Test
    void drop_costs_a_wheel_of_many_teeth_more() {
        double few = form(1, 1.6, 4, 1, 1, 0.2).with(15).workingTurn() / (Math.PI / 15);
        double many = form(1, 1.6, 4, 1, 1, 0.2).with(30).workingTurn() / (Math.PI / 30);

        assertThat(few).isCloseTo(11.0 / 12, within(1e-12));
        assertThat(few - many).isCloseTo(0.0833, within(0.00005));
        assertThat(form(1, 1.6, 10, 2, 2, 0.2).with(15).workingTurn()).isCloseTo(Math.toRadians(4 + 6), within(1e-12));
    }

    // A wedge of 45 degrees passes on (1 - µ) / (1 + µ): tan 45° / tan(45° + atan µ), the addition theorem.
    @ParameterizedTest
    @CsvSource({"0, 1", "0.2, 0.66666666667", "0.25, 0.6", "0.5, 0.33333333333", "1, 0"})
    void an_impulse_face_at_forty_five_degrees_passes_on_its_known_share(double friction, double efficiency) {
        // Thirty teeth over seven and a half spaces: pallet radius equal to the wheel's, so lift = working turn makes
        // 45°.
        Deadbeat escapement = form(1, Math.toRadians(90), 4.5, 1, 1.5, friction).with(30);

        assertThat(escapement.palletRadius()).isCloseTo(1, within(1e-12));
        assertThat(escapement.impulseEfficiency()).isCloseTo(efficiency, within(1e-10));
    }

    // Energy of one beat: what the wheel turns through against its torque is all accounted for. Relative 1e-12: a few
    // dozen operations in double.
    @Test
    void the_books_of_a_beat_balance() {
        Random random = new Random(3);
        int balanced = 0;
        for (int i = 0; i < 400; i++) {
            DeadbeatForm form = random(random);
            Deadbeat escapement = form.with(12 + random.nextInt(25));
            double arc = form.escapeAngle() + random.nextDouble() * 0.03;
            double loss = 1e-6 + random.nextDouble() * 1e-4;
            double torque = escapement.torqueFor(arc, loss);
            if (Double.isInfinite(torque)) {
                continue;
            }
            balanced++;
            double impulse = torque * escapement.workingTurn();
            double passed = impulse * escapement.impulseEfficiency();
            double impulseFriction = impulse - passed;
            double inertia = passed * form.inertiaShare();
            double locking =
                    form.friction() * torque / form.wheelRadius() * escapement.palletRadius() * (2 * arc - form.lift());
            double palletArbor = 2 * arc * form.palletArborTorque();
            double drop = torque * form.drop();

            double spent = loss + locking + impulseFriction + palletArbor + inertia + drop;

            assertThat(spent).isCloseTo(torque * Math.PI / escapement.teeth(), withinPercentage(1e-10));
        }
        assertThat(balanced).isGreaterThan(200);
    }

    @Test
    void no_torque_swings_the_pendulum_beyond_the_saturation_arc() {
        Random random = new Random(4);
        for (int i = 0; i < 200; i++) {
            Deadbeat escapement = random(random).with(12 + random.nextInt(25));
            double arc = escapement.saturationArc();
            if (!escapement.exists() || arc < escapement.form().escapeAngle()) {
                continue;
            }
            assertThat(escapement.gain(arc)).isCloseTo(0, within(1e-15));
            assertThat(escapement.torqueFor(arc * (1 + 1e-9), 1e-6)).isInfinite();
            assertThat(escapement.torqueFor(arc * (1 - 1e-9), 1e-6)).isFinite();
        }
    }

    // Too few teeth for the span, or a drop that eats the whole tooth space: the gain alone can come out positive
    // there,
    // because two signs cancel.
    @ParameterizedTest
    @CsvSource({"4, 120, 1.5", "30, 95, 6.5", "30, 95, 6", "60, 95, 3.05"})
    void an_escapement_that_does_not_exist_needs_infinite_torque(int teeth, double spanLimit, double drop) {
        Deadbeat escapement =
                form(0.026, Math.toRadians(spanLimit), 4, 1, drop, 0.2).with(teeth);
        HeldArc held = new HeldArc(escapement, new Pendulum(0.15, 0.02, 350, 9.81), 0.02);

        assertThat(escapement.exists()).isFalse();
        assertThat(escapement.torqueFor(escapement.form().escapeAngle(), 1e-6)).isInfinite();
        assertThat(held.need(0.5).torque()).isInfinite();
        assertThat(held.need(0.5).memory()).isZero();
    }

    // 2 A M by definition: 2 · 0.05 · 1e-6 J.
    @Test
    void a_coulomb_torque_takes_twice_the_arc_a_beat() {
        BeatBooks books = form(0.026, 1.6, 4, 1, 1.5, 0.2).with(30).books(1e-3, 0.05, 1e-6);

        assertThat(books.palletArbor()).isCloseTo(1e-7, within(1e-20));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0    | 1.6 | 0.07 | 0.02 | 0.03 | 0.2  | 0     | 0.03 | The wheelRadius (0.0 m) of an escape wheel must be more than 0.0 m. Maybe 1.0E-6 m.
            0.03 | 0   | 0.07 | 0.02 | 0.03 | 0.2  | 0     | 0.03 | The spanLimit (0.0 rad) of the pallets must be more than 0.0 rad. Maybe 1.0E-6 rad.
            0.03 | 3.2 | 0.07 | 0.02 | 0.03 | 0.2  | 0     | 0.03 | The spanLimit (3.2 rad) of the pallets must be less than 3.141592653589793 rad. Maybe 3.141591653589793 rad.
            0.03 | 1.6 | 0    | 0.02 | 0.03 | 0.2  | 0     | 0.03 | The lift (0.0 rad) of the pallets must be more than 0.0 rad. Maybe 1.0E-6 rad.
            0.03 | 1.6 | 0.07 | -0.1 | 0.03 | 0.2  | 0     | 0.03 | The lock (-0.1 rad) of the pallets must be at least 0.0 rad. Maybe 0.0 rad.
            0.03 | 1.6 | 0.07 | 0.02 | -0.1 | 0.2  | 0     | 0.03 | The drop (-0.1 rad) of an escape wheel must be at least 0.0 rad. Maybe 0.0 rad.
            0.03 | 1.6 | 0.07 | 0.02 | 0.03 | -0.2 | 0     | 0.03 | The friction (-0.2) of the pallets must be at least 0.0. Maybe 0.0.
            0.03 | 1.6 | 0.07 | 0.02 | 0.03 | 0.2  | -1e-6 | 0.03 | The palletArborTorque (-1.0E-6 N m) of a deadbeat must be at least 0.0 N m. Maybe 0.0 N m.
            0.03 | 1.6 | 0.07 | 0.02 | 0.03 | 0.2  | 0     | -0.1 | The inertiaShare (-0.1) of the impulse must be at least 0.0. Maybe 0.0.
            0.03 | 1.6 | 0.07 | 0.02 | 0.03 | 0.2  | 0     | 1    | The inertiaShare (1.0) of the impulse must be less than 1.0. Maybe 0.999999.
            NaN  | 1.6 | 0.07 | 0.02 | 0.03 | 0.2  | 0     | 0.03 | The wheelRadius (NaN m) of an escape wheel must be more than 0.0 m. Maybe 1.0E-6 m.
            """)
    void a_figure_out_of_its_range_is_refused_with_the_nearest_that_works(
            double radius,
            double span,
            double lift,
            double lock,
            double drop,
            double friction,
            double torque,
            double share,
            String sentence) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DeadbeatForm(radius, span, lift, lock, drop, friction, torque, share))
                .withMessage(sentence);
    }

    @Test
    void every_figure_at_its_bound_is_taken() {
        assertThat(new DeadbeatForm(1e-6, 3.141591, 1e-6, 0, 0, 0, 0, 0).escapeAngle())
                .isPositive();
    }

    @Test
    void an_escape_wheel_has_two_teeth_at_least() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> form(1, 1.6, 4, 1, 1, 0.2).with(1));
    }

    private static DeadbeatForm random(Random random) {
        return new DeadbeatForm(
                0.01 + random.nextDouble() * 0.04,
                1 + random.nextDouble(),
                Math.toRadians(1 + random.nextDouble() * 5),
                Math.toRadians(random.nextDouble() * 2),
                Math.toRadians(random.nextDouble() * 3),
                0.05 + random.nextDouble() * 0.3,
                random.nextDouble() * 1e-5,
                random.nextDouble() * 0.2);
    }

    private static DeadbeatForm form(
            double wheelRadius, double spanLimit, double lift, double lock, double drop, double friction) {
        return new DeadbeatForm(
                wheelRadius,
                spanLimit,
                Math.toRadians(lift),
                Math.toRadians(lock),
                Math.toRadians(drop),
                friction,
                1e-6,
                0.03);
    }
}
