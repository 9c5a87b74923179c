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
        return new RatchetForm(new RatchetSize(teeth, depth, 0.005, 0.003), 0.004, 0.0024, wall);
    }

    // Rod 4 mm, tube 2.4 mm, walls 0.8 mm, pins 3 mm: pins at 2 + 2.4 + 0.8 + 1.5 = 6.7 mm, roots at 6.7 + 1.5 + 0.8 =
    // 9 mm,
    // tips 2.5 mm further. The nose is 1.6 mm thick and bears 0.8 mm above the root. Chord of a 20th part: 18 sin 9°
    // mm.
    @Test
    void roots_stand_a_wall_outside_the_pins() {
        RatchetForm form = form(20, 0.0025, 0.0008);

        assertThat(form.pinRadius()).isCloseTo(0.0067, within(1e-12));
        assertThat(form.rootRadius()).isCloseTo(0.009, within(1e-12));
        assertThat(form.tipRadius()).isCloseTo(0.0115, within(1e-12));
        assertThat(form.contactHeight()).isCloseTo(0.0008, within(1e-12));
        assertThat(form.contactRadius()).isCloseTo(0.0098, within(1e-12));
        assertThat(form.rootThickness()).isCloseTo(0.018 * Math.sin(Math.toRadians(9)), within(1e-12));
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
