// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.teeth.outline.GearOutline;
import drumfall.solver.teeth.outline.Moments;
import drumfall.solver.teeth.outline.Ring;
import drumfall.solver.teeth.outline.WheelBody;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Windows by hand, mm. Walls of 0.8 mm make arms of 4.8 mm. */
class CrossingTest {
    private static final Crossing CROSSING = Crossing.of(0.0008, 0.004, 0.003);

    // Rod of 4 mm and a wall of 3 mm: 5 mm. Four arms of 4.8 mm with corners of 2 mm, whose middles stay 0.8 mm
    // asunder, part at (2.4 + 2 + 0.4) √2 - 2 = 4.7882 mm.
    @Test
    void a_hub_has_its_wall_and_lets_the_arms_part() {
        assertThat(CROSSING.armWidth()).isCloseTo(0.0048, within(1e-15));
        assertThat(CROSSING.hubRadius()).isCloseTo(0.005, within(1e-15));
        assertThat(Crossing.of(0.0008, 0.004, 0.0012).hubRadius())
                .isCloseTo((4.8 * Math.sqrt(2) - 2) / 1e3, within(1e-15));
        assertThat(Crossing.of(0.0008, 0.010, 0).hubRadius()).isCloseTo(0.0058, within(1e-15));
    }

    /*
     * A window with round corners is the sharp one drawn in by 2 mm and let out again; letting out by c adds c times the
     * boundary and π c² to an area whose corners all point outwards (Steiner's formula, Federer 1959, from memory). Within the
     * quadrant between lines at 4.4 mm, from 2 mm outside the hub to 2 mm inside the rim: worked apart from the program,
     * counted on a grid of 0.01 mm for the second and the last row (875.08, 2058.35).
     */
    @ParameterizedTest
    @CsvSource({
        "30.25, 5, 2297.7175",
        "20, 5, 875.0797",
        "13, 5, 280.7299",
        "30.25, 6.25, 2277.7936",
        "30.25, 12, 2058.3604"
    })
    void four_windows_have_the_area_of_quadrants_let_out_by_their_corners(double rim, double hub, double area) {
        double windows = 1e6 * (CROSSING.opened((rim + 2) / 1e3, 0.002) - CROSSING.filled(hub / 1e3));

        assertThat(windows).isCloseTo(area, within(5e-5));
    }

    // Both are closed forms, one from the lines and arcs that are drawn: rounding alone.
    @ParameterizedTest
    @CsvSource({"32.75, 2.5, 5", "32.75, 2.5, 6.25", "32.75, 2.5, 14", "70, 5, 17.3", "16, 2.4, 5"})
    void windows_are_those_that_are_drawn_whatever_pinion_fills_them(double root, double rim, double foot) {
        WheelBody body = new WheelBody(4, 0.8, 2 * foot, rim, 4, 4.8, 2);
        double drawn = -GearOutline.inside(body, root).stream()
                .skip(1)
                .map(Ring::moments)
                .mapToDouble(Moments::area)
                .sum();

        assertThat(1e6 * (CROSSING.opened(root / 1e3, rim / 1e3) - CROSSING.filled(foot / 1e3)))
                .isCloseTo(drawn, within(1e-9));
    }

    // Rim of 2.5 modules, hub of 5 mm, window of 6 mm at least: a root of 13.5 mm at module 1 just does.
    @Test
    void a_wheel_without_room_for_windows_stays_solid() {
        assertThat(CROSSING.rim(0.001)).isCloseTo(0.0025, within(1e-15));
        assertThat(CROSSING.crossed(0.01351, 0.0025)).isTrue();
        assertThat(CROSSING.opened(0.01351, 0.0025)).isPositive();
        assertThat(CROSSING.crossed(0.01349, 0.0025)).isFalse();
        assertThat(CROSSING.opened(0.01349, 0.0025)).isZero();
    }

    // 3 mm between pinion and rim: corners of 0.45 · 3 mm; 6 mm: of 2 mm; 1.9 mm: no window.
    @ParameterizedTest
    @CsvSource({"0.006, 0.002", "0.003, 0.00135", "0.002, 0.0009", "0.0019, 0", "-0.001, 0"})
    void windows_that_a_pinion_leaves_low_are_nearly_round_at_their_ends(double room, double corner) {
        assertThat(CROSSING.cornerWithin(room)).isCloseTo(corner, within(1e-15));
    }

    @Test
    void a_rim_is_never_thinner_than_a_wall() {
        assertThat(CROSSING.rim(0.0003)).isCloseTo(0.0008, within(1e-15));
        assertThat(CROSSING.escapeRim()).isCloseTo(0.0024, within(1e-15));
    }

    @Test
    void a_pinion_on_the_hub_fills_nothing() {
        assertThat(CROSSING.filled(0.005)).isZero();
        assertThat(CROSSING.filled(0.0051)).isPositive();
    }
}
