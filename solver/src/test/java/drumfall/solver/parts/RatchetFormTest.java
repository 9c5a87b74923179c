// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes of a ratchet by hand; 1e-12 m for rounding. */
class RatchetFormTest {
    private static RatchetForm form(int teeth, double depth, double wall) {
        return form(teeth, depth, wall, 0.04);
    }

    private static RatchetForm form(int teeth, double depth, double wall, double drum) {
        return new RatchetForm(new RatchetSize(teeth, depth, 0.005, 0.003), 0.004, drum, 0.0024, wall);
    }

    // Rod 4 mm, tube 2.4 mm, walls 0.8 mm, pins 3 mm: pins at 2 + 2.4 + 0.8 + 1.5 = 6.7 mm, the boss around them to
    // 6.7 + 1.5 + 0.8 = 9 mm, roots a quarter of a wall further, tips another 2.5 mm. The nose is 1.6 mm thick and
    // bears
    // 0.8 mm above the root. Chord of a 20th part: 18.4 sin 9° mm.
    @Test
    void roots_stand_just_outside_the_boss_around_the_pins() {
        RatchetForm form = form(20, 0.0025, 0.0008);

        assertThat(form.hollow()).isTrue();
        assertThat(form.pinRadius()).isCloseTo(0.0067, within(1e-12));
        assertThat(form.rootRadius()).isCloseTo(0.0092, within(1e-12));
        assertThat(form.tipRadius()).isCloseTo(0.0117, within(1e-12));
        assertThat(form.contactHeight()).isCloseTo(0.0008, within(1e-12));
        assertThat(form.contactRadius()).isCloseTo(0.01, within(1e-12));
        assertThat(form.rootThickness()).isCloseTo(0.0184 * Math.sin(Math.toRadians(9)), within(1e-12));
    }

    // A chamber takes pins with walls beside them, 0.8 + 3 + 0.8 = 4.6 mm, between tube and rim of 2.4 mm each around a
    // rod
    // of 4 mm: a drum of 2 (2 + 2.4 + 4.6 + 2.4) = 22.8 mm. Below that the pins stand a wall outside the bore, at
    // 2 + 0.8 + 1.5 = 4.3 mm, in a drum of at least 2 (2 + 0.8 + 3 + 0.8) = 13.2 mm.
    @ParameterizedTest
    @CsvSource({"0.0228, true, 0.0067", "0.02279, false, 0.0043", "0.0132, false, 0.0043"})
    void the_pins_of_a_drum_without_a_chamber_stand_beside_its_bore(double drum, boolean hollow, double pins) {
        RatchetForm form = form(20, 0.0025, 0.0008, drum);

        assertThat(form.hollow()).isEqualTo(hollow);
        assertThat(form.pinRadius()).isCloseTo(pins, within(1e-12));
        assertThat(RatchetForm.leastDrum(0.004, 0.0008)).isCloseTo(0.0132, within(1e-12));
    }

    // Tips at 11.7 mm; the click's eye is 3 + 4 · 0.8 = 6.2 mm across and 1 mm clear of them.
    @Test
    void the_click_turns_clear_of_the_ratchet() {
        RatchetForm form = form(20, 0.0025, 0.0008);

        assertThat(form.clickBoss()).isCloseTo(0.0062, within(1e-12));
        assertThat(form.clickPivot(0.001)).isCloseTo(0.0158, within(1e-12));
        assertThat(form.reach(0.001)).isCloseTo(0.0189, within(1e-12));
    }

    // 60 teeth two walls of 0.8 mm apart go round 60 · 1.6 mm: a radius of 15.279 mm.
    @Test
    void many_teeth_make_the_ratchet_larger_so_that_they_stand_two_walls_apart() {
        assertThat(form(60, 0.0025, 0.0008).rootRadius()).isCloseTo(0.0152789, within(1e-7));
    }

    // The tapered tooth sliced into thin sections: 6 F x / (b t²) at each, the worst of them against that of an even
    // tooth
    // at its root. Slices of a 20 000th part leave the worst within a part in 1e6.
    @ParameterizedTest
    @CsvSource({"0.0025, 0.0008", "0.0025, 0.00125", "0.0025, 0.0013", "0.0025, 0.002", "0.0025, 0.0024"})
    void the_worst_section_of_a_tapered_tooth_decides(double depth, double contact) {
        double worst = 0;
        for (int i = 0; i < 20_000; i++) {
            double x = contact * i / 20_000;
            worst = Math.max(worst, (contact - x) / Math.pow(1 - x / depth, 2));
        }
        assertThat(form(20, depth, contact).bendingHeight()).isCloseTo(worst, withinPercentage(1e-4));
    }

    @Test
    void a_click_that_bears_at_the_tip_is_held_by_nothing() {
        assertThat(form(20, 0.0025, 0.0025).bendingHeight()).isInfinite();
        assertThat(form(20, 0.0025, 0.003).bendingHeight()).isInfinite();
    }
}
