// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumfall.solver.fit.FitException;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FinishedHoleTest {
    private static final DrillRack METRIC = DrillRack.of(DrillSeries.METRIC);
    private static final DrillRack INCH = DrillRack.of(DrillSeries.FRACTIONAL_INCH);
    private static final DrillRack BOTH = DrillRack.of(DrillSeries.METRIC, DrillSeries.FRACTIONAL_INCH);

    // Common practice, no source: a 1.6 mm or 1/16 in drill for an arbor of 1.5 mm, a clearance of about 0.1
    // mm. The inch drill leaves 0.0875 mm and is therefore named only if no more is asked for.
    @ParameterizedTest
    @CsvSource({
        "100000, 1.6 mm,  5/64 in, 1.6 mm",
        " 87500, 1.6 mm,  1/16 in, 1/16 in",
        " 87501, 1.6 mm,  5/64 in, 1.6 mm",
        "     0, 1.5 mm,  1/16 in, 1.5 mm",
    })
    void the_drill_is_the_nearest_that_leaves_the_clearance(long clearance, String metric, String inch, String either) {
        assertThat(drill(METRIC, clearance)).isEqualTo(metric);
        assertThat(drill(INCH, clearance)).isEqualTo(inch);
        assertThat(drill(BOTH, clearance)).isEqualTo(either);
    }

    @Test
    void a_bore_is_drawn_smaller_by_the_skim_and_larger_by_the_shrinkage() {
        FinishedHole bore = FinishedHole.bore("third arbor, front", 1_500_000, 100_000, finish(METRIC));

        assertThat(bore)
                .isEqualTo(new FinishedHole(
                        "third arbor, front", 1_500_000, 100_000, Drill.metric(1_600_000), 150_000, 180_000));
        assertThat(bore.drawn()).isEqualTo(1_600_000 - 150_000 + 180_000);
        assertThat(bore.printed()).isEqualTo(1_450_000);
        assertThat(bore.play()).isEqualTo(100_000);
        assertThat(bore.excess()).isZero();
    }

    @Test
    void a_press_seat_takes_a_drill_below_its_bearing_and_a_loose_one_above() {
        Bearing bearing = new Bearing("623", 3_000_000, 10_000_000, 4_000_000, 10_000);

        assertThat(FinishedHole.seat("drum", bearing, -100_000, finish(METRIC)).play())
                .isEqualTo(-100_000);
        assertThat(FinishedHole.seat("drum", bearing, 50_000, finish(METRIC)).play())
                .isEqualTo(100_000);
    }

    @Test
    void a_hole_wider_than_every_drill_is_refused_with_the_largest() {
        assertThatThrownBy(() -> FinishedHole.bore("drum", 25_000_000, 100_000, finish(METRIC)))
                .isInstanceOf(FitException.class)
                .hasMessage("The bored diameter (25.1 mm) of hole (drum) must be at most the largest drill of the rack,"
                        + " 25 mm. Maybe add a drill of 25.1 mm.");
    }

    @ParameterizedTest
    @CsvSource({"99999, false", "100000, true", "200000, true", "200001, false"})
    void the_skim_lies_from_a_tenth_to_a_fifth_of_a_millimetre(long skim, boolean stands) {
        if (stands) {
            assertThat(new Finish(METRIC, skim, 0).skim()).isEqualTo(skim);
        } else {
            assertThatThrownBy(() -> new Finish(METRIC, skim, 0))
                    .hasMessageMatching(
                            "The skim \\(.* mm\\) of the finish must lie from 0\\.1 mm to 0\\.2 mm\\. Maybe .*");
        }
    }

    @Test
    void sizes_that_cannot_be_are_refused() {
        assertThatThrownBy(() -> new Finish(METRIC, 150_000, 1_000_001))
                .hasMessageContaining("shrinkage (1.000001 mm)");
        assertThatThrownBy(() -> FinishedHole.bore("x", 1_500_000, -1, finish(METRIC)))
                .hasMessageContaining("The runningClearance (-0.000001 mm) of bore (x)");
        assertThatThrownBy(() -> FinishedHole.bore(" ", 1_500_000, 0, finish(METRIC)))
                .hasMessageContaining("name");
        assertThatThrownBy(() -> FinishedHole.bore("x", 0, 0, finish(METRIC))).hasMessageContaining("fitted diameter");
        assertThatThrownBy(() -> new FinishedHole("x", 1_500_000, 100_000, Drill.metric(1_550_000), 150_000, 0))
                .hasMessageContaining("The drill (1.55 mm) of hole (x) must lie from 1.6 mm");
    }

    @Test
    void no_smaller_drill_of_the_rack_would_do_and_the_drill_always_cuts() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 500; i++) {
            long arbor = random.nextLong(500_000, 20_000_000);
            long clearance = random.nextLong(0, 500_000);
            FinishedHole bore = FinishedHole.bore("bore", arbor, clearance, finish(BOTH));

            assertThat(bore.excess()).isNotNegative();
            assertThat(bore.printed()).isLessThan(bore.drill().diameter());
            assertThat(BOTH.drills())
                    .noneMatch(drill -> drill.diameter() >= arbor + clearance
                            && drill.diameter() < bore.drill().diameter());
        }
    }

    private static String drill(DrillRack rack, long clearance) {
        return FinishedHole.bore("bore", 1_500_000, clearance, finish(rack))
                .drill()
                .label();
    }

    private static Finish finish(DrillRack rack) {
        return new Finish(rack, 150_000, 180_000);
    }
}
