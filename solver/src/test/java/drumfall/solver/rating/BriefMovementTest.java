// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import drumfall.solver.power.Movement;
import drumfall.solver.samples.Briefs;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Figures that a brief hands to the walk. The demonstration brief: bores 0.12 to 0.28, static factor 1.3, bearing 0.0015 and
 * 0.02 N mm, wheels 5 mm and pinions 8 mm long, drum 40 mm with walls of 2.4 mm, plates 70 mm apart. Tolerances are rounding.
 */
class BriefMovementTest {
    private static final double BORE = 0.2;

    // Rings 1.2 mm around 2 mm have 12.0637 mm²; beside a wheel of 5 mm and leaves of 11.3 mm they are at most 75 -
    // 16.3 + 0.2 =
    // 58.9 mm, 0.88109 g of 1.24 g/cm³; bores of 16.3 mm take 0.06350 g off: 2e-4 m · 0.81759 g · 9.80665.
    @Test
    void a_fixed_rod_is_rubbed_at_its_own_radius_by_spacers_less_bores() {
        ArborFriction intermediate = arbor("", ArborRole.INTERMEDIATE);

        assertThat(intermediate.wheelSlope()).isCloseTo(BORE * 0.001, within(1e-12));
        assertThat(intermediate.pinionSlope()).isCloseTo(BORE * 0.001, within(1e-12));
        assertThat(intermediate.standing()).isCloseTo(1.60356e-6, within(1e-10));
    }

    // 0.28 lb per cubic inch of steel (Beckett, 8th ed. 1903, p. 53), 7750 kg/m³: a rod of 3 mm weighs 4.60161 g over
    // 75 + 9 mm; spacers 1.15642 g, bores 0.14287 g: 3e-4 m · 5.61516 g · 9.80665 = 1.65198e-5 N m. The hour wheel's
    // pipe
    // is 1 + 1.8 + 17 + 4.8 = 24.6 mm, 123 layers; with a gap of 1 mm, hands of 4.8 mm and fingers of 6 mm the rod's
    // end
    // is 3 + 36.4 mm before the middle of the front plate and weighs 2.15839 g; supports at least
    // 6 + 1 + 1.8 + 8 + 6 + 44.8 = 67.6 mm apart carry it with 3e-4 (1 + 39.4/67.6) m: 1.00510e-5 N m. All beside the
    // 1e-3 N m of the hands.
    @Test
    void a_turning_rod_brings_its_own_weight_to_the_bores() {
        ArborFriction centre = arbor("/hands/motionWork = false", ArborRole.CENTRE);

        assertThat(centre.wheelSlope()).isCloseTo(BORE * 0.0015, within(1e-12));
        assertThat(centre.standing()).isCloseTo(1e-3 + 1.65198e-5 + 1.00510e-5, within(1e-9));
    }

    // Motion work and hands weigh 9.4799 g, 27.232 mm before the middle of the plate: 3e-4 (1 + 2 · 27.232/67.6) m make
    // 5.03604e-5 N m; the rod goes on 14.6 mm further, 2.95820 g with 3e-4 (1 + 54.0/67.6) m: 1.56551e-5 N m.
    @Test
    void motion_work_and_hands_weigh_on_the_centre_arbor_before_its_front_support() {
        assertThat(arbor("", ArborRole.CENTRE).standing())
                .isCloseTo(1e-3 + 1.65198e-5 + 5.03604e-5 + 1.56551e-5, within(1e-9));
    }

    // On a rod that stands still they rub at its radius: 3e-4 m · 9.4799 g · 9.80665 = 2.78899e-5 N m, and spacers less
    // bores 3e-4 m · 1.01355 g · 9.80665 = 2.98185e-6 N m.
    @Test
    void on_a_fixed_rod_motion_work_and_hands_rub_as_a_bore_does() {
        assertThat(arbor("/arbors/centre/kind = \"fixed\"", ArborRole.CENTRE).standing())
                .isCloseTo(1e-3 + 2.78899e-5 + 2.98185e-6, within(1e-9));
    }

    @Test
    void only_the_centre_arbor_drives_the_hands() {
        for (ArborRole role : ArborRole.values()) {
            double with = arbor("/hands/torque = \"5 N mm\"", role).standing();
            double without = arbor("/hands/torque = \"0 N mm\"", role).standing();

            assertThat(with - without).isCloseTo(role == ArborRole.CENTRE ? 5e-3 : 0, within(1e-12));
        }
    }

    @Test
    void two_bearings_carry_the_drum_with_both_their_drags() {
        ArborFriction drum = arbor("", ArborRole.DRUM);

        assertThat(drum.pinionSlope()).isCloseTo(0.0015 * 0.002, within(1e-12));
        // Rod of 4 mm and 75 + 12 + 14.6 + 17 mm: 11.5504 g; spacers of 75 - 5 - 7.5 - 44.8 + 0.2 mm, 0.43512 g; the
        // great
        // wheel's bore 0.07791 g: 11.9076 g · 9.80665 · 3e-6 m = 3.50322e-7 N m on top of 2 · 0.02 N mm.
        assertThat(drum.standing()).isCloseTo(4e-5 + 3.50322e-7, within(1e-11));
    }

    // Rear bore 0.2 · 1 mm = 2e-4 m for an arbor of 2 mm; the rod does not turn, so it does not weigh; spacers less
    // bores
    // are 0.81759 g.
    @Test
    void the_worse_end_of_a_hub_counts_until_the_arbors_are_placed() {
        ArborFriction arbor = arbor(
                "/arbors/intermediate/kind = \"fixed\" & /arbors/intermediate/bearings = \"front\"",
                ArborRole.INTERMEDIATE);

        assertThat(arbor.wheelSlope()).isCloseTo(2e-4, within(1e-12));
        assertThat(arbor.pinionSlope()).isCloseTo(2e-4, within(1e-12));
        assertThat(arbor.standing()).isCloseTo(2.160356e-5, within(1e-10));
    }

    @ParameterizedTest
    @EnumSource(ArborRole.class)
    void sticking_takes_the_static_factor_everywhere_but_at_the_hands(ArborRole role) {
        Movement movement = movement("/hands/torque = \"0 N mm\"", Expectation.MIDDLE);
        ArborFriction running = movement.regime(Criterion.RUNNING).arbor(role);
        ArborFriction sticking = movement.regime(Criterion.BINDING).arbor(role);

        assertThat(sticking.wheelSlope()).isCloseTo(1.3 * running.wheelSlope(), within(1e-12));
        assertThat(sticking.pinionSlope()).isCloseTo(1.3 * running.pinionSlope(), within(1e-12));
        assertThat(movement.regime(Criterion.BINDING).toothFriction()).isCloseTo(1.3 * 0.25, within(1e-12));
    }

    @Test
    void the_bands_are_read_at_their_smooth_end_their_middle_and_their_rough_end() {
        assertThat(movement("", Expectation.SMOOTHEST).pendulum().quality()).isEqualTo(450);
        assertThat(movement("", Expectation.MIDDLE).pendulum().quality()).isEqualTo(350);
        assertThat(movement("", Expectation.ROUGHEST).pendulum().quality()).isEqualTo(250);
        assertThat(movement("", Expectation.SMOOTHEST).escapement().friction()).isCloseTo(0.12, within(1e-15));
        assertThat(movement("", Expectation.ROUGHEST).escapement().friction()).isCloseTo(0.28, within(1e-15));
    }

    private static ArborFriction arbor(String edits, ArborRole role) {
        return movement(edits, Expectation.MIDDLE).regime(Criterion.RUNNING).arbor(role);
    }

    private static Movement movement(String edits, Expectation expectation) {
        Brief brief = Briefs.demoWith(edits);
        return new BriefMovement(brief, BriefTeeth.of(brief, Set.of()), ArborLoads.of(brief), expectation.point())
                .movement();
    }
}
