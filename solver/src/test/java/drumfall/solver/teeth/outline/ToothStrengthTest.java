// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.teeth.form.BasicRack;
import drumfall.solver.teeth.form.CycloidalPair;
import drumfall.solver.teeth.form.InvoluteGear;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToothStrengthTest {
    // Shigley's Mechanical Engineering Design, table 14-2, 20 degree full depth, as quoted by published programs.
    // The source gives no root fillet; the teeth here are cut 1.25 deep with a rounding of 0.2 modules.
    private static final BasicRack RACK = new BasicRack(Math.toRadians(20), 1, 1.25, 0.2);

    @ParameterizedTest
    @CsvSource({
        "12, .245", "13, .261", "14, .277", "15, .290", "16, .296", "17, .303", "18, .309", "19, .314", "20, .322",
        "21, .328", "22, .331", "24, .337", "26, .346", "28, .353", "30, .359", "34, .371", "38, .384", "43, .397",
        "50, .409", "60, .422", "75, .435", "100, .447", "150, .460", "300, .472"
    })
    void the_form_factor_of_a_drawn_involute_is_within_three_percent_of_the_lewis_table(int count, double factor) {
        double drawn = new ToothStrength(InvoluteGear.of(RACK, count, 0), 0).formFactorAtTip();
        assertThat(drawn).isCloseTo(factor, within(0.03 * factor));
    }

    // The same table's last two rows, 400 teeth and the rack, stand 4 and 5 % above what a straight-flanked tooth of
    // these
    // proportions can have: its inscribed parabola touches the flank, Y = 4/3 t tan a with t the thickness where the
    // load
    // crosses the centre line, t = (pi/2 - 2 tan a)(1 + tan^2 a). They are held against that closed form instead.
    @Test
    void the_form_factor_of_a_rack_is_the_inscribed_parabolas() {
        double tan = Math.tan(Math.toRadians(20));
        double exact = 4.0 / 3 * (Math.PI / 2 - 2 * tan) * (1 + tan * tan) * tan;
        double drawn = new ToothStrength(InvoluteGear.of(RACK, 100_000, 0), 0).formFactorAtTip();
        // 200 sections a piece leave the foot of the parabola good to 1e-4; a rack of 100000 teeth is flat to as much.
        assertThat(drawn).isCloseTo(exact, within(2e-4));
        assertThat(exact).isCloseTo(0.485, within(0.05 * 0.485));
    }

    // As quoted by a published program: 3200 N, b 30 mm, m 4 mm, Y 0.32 gives 83.333 MPa.
    @Test
    void a_stress_from_the_form_factor_is_the_worked_examples() {
        assertThat(ToothStrength.bendingStress(3200, 30, 4, 0.32)).isCloseTo(83.333, within(5e-4));
    }

    @Test
    void a_radial_leaf_is_weaker_than_its_wheels_tooth_and_thinning_weakens_both() {
        CycloidalPair pair = CycloidalPair.customary(60, 8);
        double leaf = new ToothStrength(pair.pinion(), 0).formFactor(4.3);
        double tooth = new ToothStrength(pair.wheel(), 0).formFactor(31.3);
        assertThat(leaf).isPositive().isLessThan(tooth);
        assertThat(new ToothStrength(pair.pinion(), 0.1).formFactor(4.3)).isLessThan(leaf);
    }

    @Test
    void a_tooth_is_printable_until_two_extrusions_no_longer_fit_its_narrowest_place() {
        ToothStrength leaf = new ToothStrength(CycloidalPair.customary(60, 8).pinion(), 0);
        double narrowest = leaf.narrowest(0.855);
        assertThat(leaf.isPrintable(narrowest / 2 * 0.99)).isTrue();
        assertThat(leaf.isPrintable(narrowest / 2 * 1.01)).isFalse();
    }
}
