// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.parts.PartStock;
import drumfall.solver.power.escape.DeadbeatForm;
import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.samples.HandClock;
import drumfall.solver.samples.Trains;
import drumfall.solver.teeth.EfficiencyCurve;
import drumfall.solver.teeth.FixedTeeth;
import drumfall.solver.teeth.InvoluteClosedForm;
import drumfall.solver.teeth.MeshLoss;
import drumfall.solver.train.DrumRun;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class WeightWalkTest {
    private static final Train EIGHT_DAY = Trains.of("96/8 m1.25 | 64/8 m1 · 60/8 m1 · E30", "40", 1);
    private static final PartStock PARTS = HandClock.parts();
    private static final Pendulum PENDULUM = new Pendulum(1, 0.1, 1000, Pendulum.STANDARD_GRAVITY);
    private static final MeshLoss TEETH = new InvoluteClosedForm(Math.toRadians(20));

    /*
     * The whole walk of one train, worked apart from the program from the formulas of the field, each mesh averaged from
     * 4000 points and the fading memory by running it until it repeats.
     *
     * Escapement: 30 teeth, radius 30 mm, span to 95°: 7 1/2 spaces, half span 45°, pallet radius 30 mm; lift 4°, lock 1°,
     * drop 1.5°, working turn 6° - 1.5° = 4.5° = 0.0785398; wedge atan(4/4.5) = 41.634°, friction angle atan 0.2 = 11.310°,
     * efficiency 0.671202. Arc (4° + 1°)/2 + 1° = 3.5°.
     * Pendulum: beat 3600 · 8 · 8 / (60 · 64 · 60) = 1 s; C(3.5°) = 1.000233; L = 0.993158 m; bob 1 kg, rod 0.1 kg:
     * m h = 1.059635 kg m; E = 0.0193822 J; Q = 1000: 6.08910e-5 J a beat.
     * Balance: impulse 0.0785398 · 0.671202 · 0.97 = 0.0511346, locking 0.2 · 1 · 3° = 0.0104720, gain 0.0406626;
     * (6.08910e-5 + 2 · 3.5° · 2e-6) / 0.0406626 = 1.50348e-3 N m. Memory: rubbing 0.2 · 1.50348e-3 + 2e-6 = 3.02695e-4 N m,
     * restoring 1.059635 · 9.80665 · sin 3.5° = 0.634391 N m; 318.310 s / (1 + 2 · 3.02695e-4 · 1000 / (π · 0.634391)) =
     * 318.310 s / 1.303762 = 244.147 s.
     * Masses as in the test of the parts, g: escape wheel 6.56681; wheels 7.19871, 7.72793, 17.05208; pinions 0.47535, 0.47535,
     * 0.86726; on the drum's arbor 34.22113.
     * Escape arbor: 1.50348e-3 (1 + 0.00015/0.030) + 0.00015 · 0.0065668 · 9.80665 = 1.52066e-3 N m.
     * Running, mesh by mesh: pitches remembered 32.553, 4.3404, 0.54255; passed 0.95469, 0.95384, 0.94671 of worst 0.8982,
     * 0.8989, 0.9023 and mean 0.9549, 0.9552, 0.9567; given to the pinions 1.58459e-3, 0.013257, 0.12105; handed on
     * 0.012448, 0.11119, 1.53442; on the drum arbor 1.53455 N m; tension 73.084 N at 21 mm, 7.4525 kg.
     * Binding: a quarter of the torque, 3.75869e-4, all friction 1.3 times, worst phases 0.86505, 0.86591, 0.87023; on the
     * drum arbor 0.565231 N m, 2.74516 kg.
     */
    @Test
    void a_train_needs_the_weight_worked_out_by_hand() {
        WeightFigure figure = new WeightWalk(movement(TEETH, 0.2, 1e-3)).weigh(EIGHT_DAY);

        assertThat(figure.need().torque()).isCloseTo(1.50348e-3, withinPercentage(0.01));
        assertThat(figure.need().memory()).isCloseTo(244.147, withinPercentage(0.01));
        assertThat(figure.running().arbors())
                .extracting(ArborNeed::load)
                .satisfiesExactly(
                        drum -> assertThat(drum).isCloseTo(1.53455, withinPercentage(1)),
                        centre -> assertThat(centre).isCloseTo(0.113323, withinPercentage(1)),
                        third -> assertThat(third).isCloseTo(0.0125509, withinPercentage(1)),
                        escape -> assertThat(escape).isCloseTo(1.52066e-3, withinPercentage(0.01)));
        assertThat(figure.running().tension()).isCloseTo(73.084, withinPercentage(1));
        assertThat(figure.running().weight()).isCloseTo(7.4525, withinPercentage(1));
        assertThat(figure.binding().weight()).isCloseTo(2.74516, withinPercentage(1));
        assertThat(figure.leastWeight()).isEqualTo(figure.running().weight());
        assertThat(figure.deciding()).isEqualTo(Criterion.RUNNING);
    }

    // Where nothing rubs, nothing is dropped and the wheel has no inertia, the weight's work is the pendulum's loss:
    // per beat
    // W g F / (beats in a fall). 1e-12: a few dozen operations.
    @Test
    void without_friction_the_weights_work_is_the_pendulums_loss() {
        DeadbeatForm smooth =
                new DeadbeatForm(0.03, Math.toRadians(95), Math.toRadians(4), Math.toRadians(1), 0, 0, 0, 0);
        Regime regime = regime(0, 0, 0);
        Movement movement = new Movement(PARTS, TEETH, PENDULUM, smooth, 0.02, regime, regime, 0.25, 1);
        DrumRun drum =
                new DrumRun(BigFraction.of(5, 4), EIGHT_DAY.drumDiameter(), BigFraction.of(2, 1000), Reeving.SINGLE);

        WeightFigure figure = new WeightWalk(movement).weigh(EIGHT_DAY);

        double beats = drum.turns() * 12 * 3600;
        double work = figure.running().weight() * Pendulum.STANDARD_GRAVITY * 1.25;
        assertThat(work).isCloseTo(figure.need().pendulumLoss() * beats, withinPercentage(1e-10));
        assertThat(figure.binding().weight()).isCloseTo(figure.running().weight() / 4, withinPercentage(1e-10));
    }

    // Antiquarian Horological Society, O. Cooke, "Time and efficiency": an eight-day longcase of the 17th century, 12
    // lb
    // (5.44 kg) falling about 5 ft, "about 1/8500 W". The drum's size cancels. 1 %: the fall is given as about 5 ft.
    @Test
    void a_longcase_clock_runs_on_an_eighty_five_hundredth_of_a_watt() {
        Movement movement = movement(TEETH, 0.2, 0);
        DrumRun drum = new DrumRun(
                BigFraction.of(1524, 1000), BigFraction.of(45, 1000), BigFraction.of(2, 1000), Reeving.SINGLE);

        double torque = movement.tensionUnder(5.44, Reeving.SINGLE) * movement.lineArm(0.045);
        double watts = torque * 2 * Math.PI * drum.turns() / (8 * 86_400);

        assertThat(watts).isCloseTo(1 / 8500.0, withinPercentage(1));
    }

    // Ball, Experimental Mechanics, lecture VI § 181: 15 foot-pounds put in for 14 got out of a pulley. The two falls
    // then
    // pull as 15 to 14 and together carry the weight, so the drum feels 14/29 of it.
    @Test
    void a_pulley_leaves_the_drum_less_than_half_the_weight() {
        Movement movement = new Movement(
                PARTS, TEETH, PENDULUM, form(0.2), 0.02, regime(0.2, 0, 1), regime(0.2, 0, 1), 0.25, 14.0 / 15);

        double tension = movement.tensionUnder(29, Reeving.DOUBLE);

        assertThat(tension).isCloseTo(14 * Pendulum.STANDARD_GRAVITY, within(1e-12));
        assertThat(movement.weightFor(tension, Reeving.DOUBLE)).isCloseTo(29, within(1e-12));
        assertThat(movement.weightFor(movement.tensionUnder(3, Reeving.SINGLE), Reeving.SINGLE))
                .isCloseTo(3, within(1e-12));
    }

    @Test
    void an_arbor_held_by_friction_needs_an_infinite_weight() {
        Regime held = new Regime(
                0.2,
                Map.of(
                        ArborRole.DRUM, new ArborFriction(0, 0, 0, 9.81),
                        ArborRole.INTERMEDIATE, new ArborFriction(0.005, 0.005, 0, 9.81),
                        ArborRole.CENTRE, new ArborFriction(0, 0, 0, 9.81),
                        ArborRole.ESCAPE, new ArborFriction(0, 0, 0, 9.81)));
        Movement movement = new Movement(PARTS, TEETH, PENDULUM, form(0.2), 0.02, held, held, 0.25, 1);

        assertThat(new WeightWalk(movement).weigh(EIGHT_DAY).leastWeight()).isInfinite();
    }

    // Drop of the whole tooth space: no escapement, whatever else holds; the figure must be infinity and not no number.
    @Test
    void a_train_without_an_escapement_needs_an_infinite_weight() {
        for (double friction : new double[] {0, 0.2}) {
            DeadbeatForm none = new DeadbeatForm(
                    0.03,
                    Math.toRadians(95),
                    Math.toRadians(4),
                    Math.toRadians(1),
                    Math.toRadians(6.5),
                    friction,
                    2e-6,
                    0.03);
            Movement movement =
                    new Movement(PARTS, TEETH, PENDULUM, none, 0.02, regime(0.2, 0, 1), regime(0.2, 0, 1), 0.25, 1);

            assertThat(new WeightWalk(movement).weigh(EIGHT_DAY).running().weight())
                    .isEqualTo(Double.POSITIVE_INFINITY);
            assertThat(new WeightWalk(movement).weigh(EIGHT_DAY).leastWeight()).isEqualTo(Double.POSITIVE_INFINITY);
        }
    }

    @Test
    void a_mesh_that_binds_at_its_worst_needs_an_infinite_weight_to_start() {
        MeshLoss binds = new FixedTeeth(EfficiencyCurve.of(0, 0.9, 0.9, 0.9));

        WeightFigure figure = new WeightWalk(movement(binds, 0.2, 0)).weigh(EIGHT_DAY);

        assertThat(figure.binding().weight()).isInfinite();
        assertThat(figure.leastWeight()).isInfinite();
        assertThat(figure.deciding()).isEqualTo(Criterion.BINDING);
    }

    // A drum arbor that is also the centre: the hourly drum of a 30-hour clock.
    @Test
    void an_hourly_drum_is_weighed_too() {
        Train hourly = Trains.of(" | 64/8 m1 · 60/8 m1 · E30", "40", 1);

        assertThat(WeightWalk.role(hourly, 0)).isEqualTo(ArborRole.DRUM);
        assertThat(WeightWalk.role(hourly, 1)).isEqualTo(ArborRole.INTERMEDIATE);
        assertThat(WeightWalk.role(hourly, 2)).isEqualTo(ArborRole.ESCAPE);
        assertThat(new WeightWalk(movement(TEETH, 0.2, 0)).weigh(hourly).leastWeight())
                .isBetween(0.1, 2.0);
    }

    @Test
    void arbors_have_their_roles() {
        assertThat(WeightWalk.role(EIGHT_DAY, 0)).isEqualTo(ArborRole.DRUM);
        assertThat(WeightWalk.role(EIGHT_DAY, 1)).isEqualTo(ArborRole.CENTRE);
        assertThat(WeightWalk.role(EIGHT_DAY, 2)).isEqualTo(ArborRole.INTERMEDIATE);
        assertThat(WeightWalk.role(EIGHT_DAY, 3)).isEqualTo(ArborRole.ESCAPE);
    }

    private static Movement movement(MeshLoss teeth, double friction, double hands) {
        return new Movement(
                PARTS,
                teeth,
                PENDULUM,
                form(friction),
                Math.toRadians(1),
                regime(friction, hands, 1),
                regime(friction, hands, 1.3),
                0.25,
                1);
    }

    private static DeadbeatForm form(double friction) {
        return new DeadbeatForm(
                0.030,
                Math.toRadians(95),
                Math.toRadians(4),
                Math.toRadians(1),
                Math.toRadians(1.5),
                friction,
                2e-6,
                0.03);
    }

    /** Rods of 1.5, 2 and 3 mm in plain bores; the drum on two bearings of 4 mm with 0.02 N mm each. */
    private static Regime regime(double friction, double hands, double factor) {
        double mu = friction * factor;
        double bearing = friction > 0 ? 0.0015 * factor * 0.002 : 0;
        double drag = friction > 0 ? 4e-5 * factor : 0;
        return new Regime(
                mu,
                Map.of(
                        ArborRole.ESCAPE, new ArborFriction(mu * 0.00075, mu * 0.00075, 0, Pendulum.STANDARD_GRAVITY),
                        ArborRole.INTERMEDIATE, new ArborFriction(mu * 0.001, mu * 0.001, 0, Pendulum.STANDARD_GRAVITY),
                        ArborRole.CENTRE, new ArborFriction(mu * 0.0015, mu * 0.0015, hands, Pendulum.STANDARD_GRAVITY),
                        ArborRole.DRUM, new ArborFriction(bearing, bearing, drag, Pendulum.STANDARD_GRAVITY)));
    }
}
