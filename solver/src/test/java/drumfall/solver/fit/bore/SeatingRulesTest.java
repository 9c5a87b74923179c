// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumfall.solver.fit.layer.LayerGrid;
import drumfall.solver.fit.layer.LayerRounding;
import org.junit.jupiter.api.Test;

class SeatingRulesTest {
    private static final Bearing SMALL = new Bearing("623", 3_000_000, 10_000_000, 4_000_000, 10_000);
    private static final Bearing THIN = new Bearing("682", 2_000_000, 5_000_000, 1_500_000, 8_000);
    private static final SeatingRules RULES = new SeatingRules(
            new Finish(DrillRack.of(DrillSeries.METRIC), 150_000, 100_000),
            100_000,
            0,
            new LayerGrid(300_000, 200_000),
            LayerRounding.UP);
    private static final Pivot DRUM = new Pivot("drum", "front", 3_000_000);

    @Test
    void a_pivot_without_a_bearing_runs_in_a_bore_with_the_clearance_of_its_drill() {
        Seating plain = RULES.plain(DRUM);

        assertThat(plain.rolling()).isEmpty();
        assertThat(plain.play()).isEqualTo(100_000);
        assertThat(plain.hole().drill().label()).isEqualTo("3.1 mm");
    }

    @Test
    void a_bearing_sits_in_a_hole_of_its_outer_diameter() {
        Seating rolling = RULES.rolling(DRUM, SMALL);

        assertThat(rolling.rolling()).contains(SMALL);
        assertThat(rolling.hole().drill().label()).isEqualTo("10 mm");
    }

    @Test
    void the_depth_of_a_seat_is_whole_layers_and_the_difference_is_told() {
        Seating.Rolling seat = RULES.rolling(DRUM, SMALL);

        assertThat(seat.depth().height()).isEqualTo(4_100_000);
        assertThat(seat.depth().difference()).isEqualTo(100_000);
        assertThat(seat.play()).isEqualTo(10_000);
    }

    @Test
    void an_arbor_that_does_not_enter_its_bearing_is_refused() {
        assertThatThrownBy(() -> RULES.rolling(DRUM, THIN))
                .hasMessage(
                        "The diameter (3 mm) of pivot (drum, front) must be at most the bore of bearing (682), 2 mm."
                                + " Maybe take an arbor of 2 mm or a larger bearing.");
    }

    @Test
    void impossible_bearings_are_refused() {
        assertThatThrownBy(() -> new Bearing("b", 3_000_000, 3_000_000, 1, 0))
                .hasMessageContaining("The outer diameter (3 mm) of bearing (b) must lie from 3.000001 mm");
        assertThatThrownBy(() -> new Bearing("b", 3, 4, 0, 0)).hasMessageContaining("width");
    }
}
