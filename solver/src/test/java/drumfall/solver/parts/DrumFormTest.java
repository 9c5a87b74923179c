// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Volumes by hand, cubic mm; rod 4 mm, walls 2 mm, 40 mm long, line 2 mm, printed walls 0.8 mm. */
class DrumFormTest {
    private static final DrumForm FORM =
            new DrumForm(0.040, 0.002, 0.002, 0.004, RatchetSize.CUSTOMARY, 0.006, 0.001, SquareSize.CUSTOMARY, 0.0008);

    /*
     * 40 mm: flanges of 20 + 3 · 2 = 26 mm: 2 · 2 π (26² - 2²) - 2 · 3 π 1.5² = 8402.190; tubes 20 to 18 and 4 to 2 mm:
     * 40 π (400 - 324 + 16 - 4) = 11 058.406; spigot 17.85 to 15.85 mm, 2 mm high: 2 π (17.85² - 15.85²) = 423.487.
     * 16 mm: no chamber of 4.6 mm between tubes to 4 and 6 mm; flanges of 14 mm: 2 · 2 π (14² - 2²) - 42.412 = 2370.332, solid
     * 40 (π (64 - 4) - 3 π 1.5²) = 6691.592.
     */
    @ParameterizedTest
    @CsvSource({"0.040, 0.026, 19884.0824", "0.016, 0.014, 9061.9240"})
    void a_drum_is_two_tubes_or_solid_between_its_flanges(double diameter, double flange, double volume) {
        assertThat(FORM.flangeRadius(diameter)).isCloseTo(flange, within(1e-15));
        assertThat(1e9 * FORM.barrel(diameter)).isCloseTo(volume, within(1e-3));
    }

    /*
     * Pins at 2 + 2 + 0.8 + 1.5 = 6.3 mm, roots at 6.3 + 1.5 + 1 = 8.8 mm, tips 11.3 mm. Saw of 18: 18 · 8.8 · 11.3 sin 20° / 2
     * = 306.094 mm²; rod and three pins 4 π + 6.75 π = 33.772 mm²; boss to 8.6 mm: 232.352 mm². Click: pivot at
     * 11.3 + 3.1 + 1 = 15.4 mm, nose 0.8 mm above the root, arm √(15.4² - 9.6²) = 12.042 mm, eye 3.1 mm, nose 0.8 mm, leaning
     * asin(2.3/12.042): 3.9 · 11.820 + 3.1² · 1.763 + 0.8² · 1.379 - 2.25 π = 56.854 mm².
     * 5 (306.094 - 33.772) + 1 (232.352 - 33.772) + 5 · 56.854 = 1844.46.
     */
    @Test
    void ratchet_and_click_are_as_thick_as_their_teeth_and_a_boss_fills_the_room() {
        assertThat(1e9 * FORM.ratchetAndClick(0.040)).isCloseTo(1844.46, within(0.05));
    }

    // Tips at 11.3 mm, a gap of 1 mm, the eye around the pivot 3 + 4 · 0.8 = 6.2 mm across.
    @Test
    void the_click_needs_ground_as_far_as_the_eye_around_its_pivot() {
        assertThat(FORM.clickGround(0.040)).isCloseTo(0.0185, within(1e-12));
    }

    // 4 + 2 · 3 = 10 mm across the flats; collar 10/√2 + 0.8 = 7.871 mm. 5 (π 7.871² - 4 π) + 12 (100 - 4 π) = 1959.54.
    @Test
    void the_winding_square_stands_on_a_collar_beyond_its_corners() {
        assertThat(1e9 * FORM.windingSquare()).isCloseTo(1959.54, within(0.05));
    }
}
