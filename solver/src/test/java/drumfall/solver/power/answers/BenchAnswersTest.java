// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.books.BookKeeper;
import drumfall.solver.power.books.LoadedArbor;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.power.statics.BentRod;
import drumfall.solver.power.statics.PointForce;
import drumfall.solver.samples.HandClock;
import drumfall.solver.train.Reeving;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tolerances are rounding of the figures here unless said otherwise. */
class BenchAnswersTest {
    // By hand: a disc of radius 40 mm, κ² = r²/2 = 8e-4 m²; µ r = 0.2 · 1 mm; 10 turns a second:
    // t = 8e-4 · 62.832 / (2e-4 · 9.80665) = 25.63 s, whatever the mass.
    @ParameterizedTest
    @CsvSource({"1000000", "7000000"})
    void a_flicked_wheel_spins_as_long_as_the_formula_says(long mass) {
        ArborFriction friction = new ArborFriction(2e-4, 2e-4, 0, Pendulum.STANDARD_GRAVITY);
        LoadedArbor arbor = new LoadedArbor(ArborRole.INTERMEDIATE, friction, 0.04, mass, 0.004, 0, 1);

        assertThat(FreeSpin.of(arbor, mass * 1e-9 * 8e-4, 20 * Math.PI).seconds())
                .isCloseTo(25.63, withinPercentage(0.02));
    }

    // A bearing's drag stops a light wheel though its friction is next to nothing: 5 g, κ² 8e-4, 0.02 N mm:
    // 4e-6 · 31.416 / 2e-5 = 6.28 s.
    @Test
    void the_drag_of_a_bearing_stops_a_light_wheel() {
        ArborFriction bearing = new ArborFriction(0, 0, 2e-5, Pendulum.STANDARD_GRAVITY);
        LoadedArbor arbor = new LoadedArbor(ArborRole.ESCAPE, bearing, 0.04, 5_000_000, 0.004, 0, 1);

        assertThat(FreeSpin.of(arbor, 5e-3 * 8e-4, 10 * Math.PI).seconds()).isCloseTo(6.283, withinPercentage(0.01));
    }

    // Common practice, no source: a free wheel with no train attached turns 10 to 20 s. The longer figure of a
    // well-made
    // clock and the shorter of a poor one are both let pass: half and twice.
    @Test
    void arbors_of_a_hand_worked_clock_spin_for_some_seconds() {
        assertThat(FreeSpin.all(LoadedClock.of(HandClock.movement(), HandClock.train(), HandClock.HANDS))
                        .get(2)
                        .seconds())
                .isBetween(5.0, 40.0);
    }

    // The decay run beat by beat: each beat takes π/Q of the energy, the arc with its root. Q 500, 3.5° down to 2.5°:
    // (1000/π) ln 1.4 = 107.1 beats. 0.4 %: the formula is the limit of small losses, here 0.6 % of the energy a beat.
    @Test
    void coasting_lasts_as_long_as_a_decay_run_beat_by_beat() {
        Coasting coasting = new Coasting(500, Math.toRadians(3.5), Math.toRadians(2.5), 0.5);
        int beats = 0;
        for (double energy = 3.5 * 3.5; energy > 2.5 * 2.5; energy *= 1 - Math.PI / 500) {
            beats++;
        }

        assertThat(coasting.beats()).isCloseTo(107.1, withinPercentage(0.01));
        assertThat((double) beats).isCloseTo(coasting.beats(), within(1.0));
        assertThat(coasting.seconds()).isCloseTo(coasting.beats() / 2, within(1e-12));
        assertThat(new Coasting(500, 0.04, 0.05, 1).beats()).isZero();
    }

    // Ball, Experimental Mechanics, lecture VI § 181, efficiency 14/15: while 29 N are wound the tight fall has 15 N.
    @Test
    void winding_through_a_pulley_pulls_the_tight_fall() {
        double kilograms = 29 / Pendulum.STANDARD_GRAVITY;
        Winding pulley = new Winding(kilograms, Pendulum.STANDARD_GRAVITY, Reeving.DOUBLE, 14.0 / 15, 0.020);
        Winding single = new Winding(kilograms, Pendulum.STANDARD_GRAVITY, Reeving.SINGLE, 14.0 / 15, 0.020);

        assertThat(pulley.tension()).isCloseTo(15, within(1e-12));
        assertThat(pulley.torque()).isCloseTo(0.3, within(1e-12));
        assertThat(single.tension()).isCloseTo(29, within(1e-12));
    }

    // Energy by hand: W (h + x) = k x²/2 with k = W/δ; h = 0 gives 2 W; h = 4 δ gives W (1 + 3) = 4 W.
    @ParameterizedTest
    @CsvSource({"0, 2", "4, 4", "7.5, 5", "12, 6"})
    void a_weight_that_slips_shocks_the_line(double dropOverStretch, double times) {
        HangingShock shock = new HangingShock(30, dropOverStretch * 1e-3, 1e-3);

        assertThat(shock.force()).isCloseTo(30 * times, within(1e-9));
    }

    @Test
    void a_shorter_line_shocks_more() {
        double shorter = HangingShock.of(30, 0.005, 0.1, 300).force();

        assertThat(shorter).isGreaterThan(HangingShock.of(30, 0.005, 1, 300).force());
        // Stretch 0.04 · 0.1 m · 30/300 = 0.4 mm; 30 (1 + √(1 + 25)) = 182.97 N.
        assertThat(shorter).isCloseTo(182.97, withinPercentage(0.01));
    }

    // Toss, The Complete Rigger's Apprentice, p. 56: at 4 to 6 diameters fibre rope is happy, 6 to 8 are recommended.
    @ParameterizedTest
    @CsvSource({"9, true", "8.9, false", "24, true"})
    void a_line_wants_drums_of_six_times_its_own_diameter(double millimetres, boolean gentle) {
        LineBend bend = new LineBend(millimetres / 1000, 0.0015);

        assertThat(bend.gentle()).isEqualTo(gentle);
        assertThat(bend.leastDiameter()).isCloseTo(0.009, within(1e-15));
    }

    @Test
    void a_line_beside_the_screw_turns_the_clock() {
        assertThat(new WallMoment(5, 9.80665, 0.02).moment()).isCloseTo(0.980665, within(1e-12));
    }

    // Two forces at random places and directions never bend a rod more than the bound, and the bound is reached.
    @Test
    void no_places_bend_a_rod_more_than_its_bound() {
        Random random = new Random(41);
        double span = 0.07;
        for (int i = 0; i < 500; i++) {
            double first = span * random.nextDouble();
            double second = span * random.nextDouble();
            BentRod rod = new BentRod(
                    span,
                    0.002,
                    RodBound.STEEL,
                    List.of(
                            PointForce.at(first, 20, 7 * random.nextDouble()),
                            PointForce.at(second, 5, 7 * random.nextDouble())));
            RodBound bound = new RodBound(25, span, 0.002, RodBound.STEEL);

            assertThat(rod.worstStress()).isLessThanOrEqualTo(bound.stress() * (1 + 1e-12));
            for (double place : new double[] {0, first, second, span}) {
                assertThat(rod.slope(place)).isLessThanOrEqualTo(bound.slope() * (1 + 1e-12));
            }
        }
        BentRod worst =
                new BentRod(span, 0.002, RodBound.STEEL, List.of(PointForce.weight(span * (1 - 1 / Math.sqrt(3)), 25)));
        assertThat(worst.slope(0))
                .isCloseTo(new RodBound(25, span, 0.002, RodBound.STEEL).slope(), withinPercentage(1e-6));
    }

    @Test
    void the_running_weight_keeps_the_arc_asked_for_and_more_weight_more_arc() {
        LoadedClock clock = clock();
        ArcCurve curve = new ArcCurve(clock, 20);

        assertThat(curve.worstArcUnder(clock.runningWeight()).orElseThrow())
                .isCloseTo(clock.need().semiArc(), withinPercentage(1e-8));
        assertThat(curve.weightKeeping(clock.need().semiArc()))
                .isCloseTo(clock.runningWeight(), withinPercentage(1e-8));
        double before = 0;
        for (ArcCurve.Point point : curve.points(clock.runningWeight(), 30, 8)) {
            double arc = point.worstArc().orElseThrow();
            assertThat(arc)
                    .isGreaterThan(before)
                    .isLessThanOrEqualTo(point.meanArc().orElseThrow());
            before = arc;
        }
    }

    @Test
    void a_weight_too_light_to_let_a_tooth_escape_has_no_arc() {
        assertThat(new ArcCurve(clock(), 20).worstArcUnder(0.5)).isEmpty();
    }

    @Test
    void more_arc_than_any_weight_gives_is_refused_with_what_the_heaviest_keeps() {
        ArcCurve curve = new ArcCurve(clock(), 20);
        double most = HandClock.movement().escapement().with(30).saturationArc();

        assertThatThrownBy(() -> curve.weightKeeping(most))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("which no weight exceeds")
                .hasMessageContaining("Maybe ask for %.4f rad, which 20.00 kg keep."
                        .formatted(curve.worstArcUnder(20).orElseThrow()));
        assertThat(curve.weightKeeping(most * 0.95)).isFinite();
        assertThatThrownBy(() -> curve.weightKeeping(Math.toRadians(2)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("where a tooth escapes");
    }

    @Test
    void the_mean_arc_of_the_curve_is_that_of_the_books() {
        BookKeeper keeper = new BookKeeper(clock());
        ArcCurve.Point point = new ArcCurve(clock(), 20).points(9, 10, 2).get(0);

        assertThat(point.meanArc().orElseThrow()).isEqualTo(keeper.under(9).semiArc());
    }

    private static LoadedClock clock() {
        return LoadedClock.of(HandClock.movement(), HandClock.train(), HandClock.HANDS);
    }
}
