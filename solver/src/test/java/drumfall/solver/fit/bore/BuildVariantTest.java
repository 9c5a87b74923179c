// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumfall.solver.fit.layer.LayerGrid;
import drumfall.solver.fit.layer.LayerRounding;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class BuildVariantTest {
    private static final Bearing SMALL = new Bearing("623", 3_000_000, 10_000_000, 4_000_000, 10_000);
    private static final Bearing THIN = new Bearing("682", 2_000_000, 5_000_000, 1_500_000, 8_000);
    private static final SeatingRules RULES = new SeatingRules(
            new Finish(DrillRack.of(DrillSeries.METRIC), 150_000, 100_000),
            100_000,
            0,
            new LayerGrid(300_000, 200_000),
            LayerRounding.UP);
    private static final List<Pivot> PIVOTS = List.of(
            new Pivot("drum", "front", 3_000_000),
            new Pivot("drum", "back", 3_000_000),
            new Pivot("third", "front", 1_500_000),
            new Pivot("third", "back", 1_500_000));

    @Test
    void a_variant_without_bearings_bores_every_pivot() {
        BuildVariant plain = BuildVariant.of("plain", PIVOTS, Map.of(), RULES);

        assertThat(plain.seatings())
                .hasSize(4)
                .allMatch(seating -> seating.rolling().isEmpty());
        assertThat(plain.seatings()).extracting(Seating::play).containsOnly(100_000L);
        assertThat(plain.bearingCounts()).isEmpty();
        assertThat(plain.drills()).extracting(Drill::label).containsExactly("1.6 mm", "3.1 mm");
    }

    @Test
    void a_bearing_at_the_drum_changes_its_two_holes_only() {
        BuildVariant plain = BuildVariant.of("plain", PIVOTS, Map.of(), RULES);
        BuildVariant rolling = BuildVariant.of("drum", PIVOTS, Map.of("drum", SMALL), RULES);

        assertThat(rolling.bearingCounts()).isEqualTo(Map.of("623", 2L));
        assertThat(rolling.seatings().subList(2, 4)).isEqualTo(plain.seatings().subList(2, 4));
        assertThat(rolling.seatings().get(0).hole().drill().label()).isEqualTo("10 mm");
    }

    @Test
    void the_depth_of_a_seat_is_whole_layers_and_the_difference_is_told() {
        BuildVariant rolling = BuildVariant.of("drum", PIVOTS, Map.of("drum", SMALL), RULES);
        Seating.Rolling seat = (Seating.Rolling) rolling.seatings().get(0);

        assertThat(seat.depth().height()).isEqualTo(4_100_000);
        assertThat(seat.depth().difference()).isEqualTo(100_000);
        assertThat(seat.play()).isEqualTo(10_000);
    }

    @Test
    void an_arbor_that_does_not_enter_its_bearing_is_refused() {
        assertThatThrownBy(() -> BuildVariant.of("thin", PIVOTS, Map.of("drum", THIN), RULES))
                .hasMessage(
                        "The diameter (3 mm) of pivot (drum, front) must be at most the bore of bearing (682), 2 mm."
                                + " Maybe take an arbor of 2 mm or a larger bearing.");
    }

    @Test
    void a_bearing_for_an_arbor_that_is_not_there_is_refused() {
        assertThatThrownBy(() -> BuildVariant.of("odd", PIVOTS, Map.of("fifth", SMALL), RULES))
                .hasMessage(
                        "The arbor (fifth) of build variant (odd) must have a pivot. Maybe name one of drum, third.");
    }

    @Test
    void impossible_bearings_are_refused() {
        assertThatThrownBy(() -> new Bearing("b", 3_000_000, 3_000_000, 1, 0))
                .hasMessageContaining("The outer diameter (3 mm) of bearing (b) must lie from 3.000001 mm");
        assertThatThrownBy(() -> new Bearing("b", 3, 4, 0, 0)).hasMessageContaining("width");
    }
}
