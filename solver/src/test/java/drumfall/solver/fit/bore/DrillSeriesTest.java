// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.bore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrillSeriesTest {
    // Count of BS 328 sizes as the rules print them (encyclopaedia article "Drill bit sizes"): 8·4 below 1 mm,
    // 20·2 below 3 mm, 110 below 14 mm, 11·4 + 1 to 25 mm. The article's "230 sizes" counts 25.25 to 25.75 mm
    // too, beyond its own "to 25.0 mm"; they are left out here.
    @Test
    void the_metric_series_has_its_published_sizes() {
        List<Long> sizes = sizes(DrillSeries.METRIC);

        assertThat(sizes).hasSize(8 * 4 + 20 * 2 + 110 + 45).isSorted().doesNotHaveDuplicates();
        assertThat(sizes.get(0)).isEqualTo(200_000);
        assertThat(sizes.get(sizes.size() - 1)).isEqualTo(25_000_000);
    }

    // Rows of the same article, mm; the last column says whether the series has the size.
    @ParameterizedTest
    @CsvSource({
        "0.20, true",
        "0.22, true",
        "0.25, true",
        "0.28, true",
        "0.30, true",
        "0.98, true",
        "0.23, false",
        "0.99, false",
        "1.00, true",
        "1.05, true",
        "1.60, true",
        "2.95, true",
        "1.02, false",
        "3.00, true",
        "3.10, true",
        "3.20, true",
        "13.90, true",
        "3.05, false",
        "14.00, true",
        "14.25, true",
        "14.50, true",
        "22.00, true",
        "14.10, false",
        "25.25, false",
    })
    void metric_sizes_step_as_published(double millimetres, boolean listed) {
        assertThat(sizes(DrillSeries.METRIC).contains(Math.round(millimetres * 1_000_000)))
                .isEqualTo(listed);
    }

    // ANSI B94.11M-1979 as quoted: "from 1/64 inch through 1 inch in 1/64 inch increments". Millimetres of a
    // public-domain table of drill sizes (metric, inch and fractional inch, 2007), exact where it prints them
    // in parentheses.
    @ParameterizedTest
    @CsvSource({
        "1,  1/64 in,  0.396875",
        "2,  1/32 in,  0.79375",
        "3,  3/64 in,  1.190625",
        "4,  1/16 in,  1.5875",
        "5,  5/64 in,  1.984375",
        "8,  1/8 in,   3.175",
        "32, 1/2 in,   12.7",
        "63, 63/64 in, 25.003125",
        "64, 1 in,     25.4",
    })
    void inch_sizes_are_irreducible_fractions_of_exact_diameter(int place, String label, double millimetres) {
        Drill drill = DrillSeries.FRACTIONAL_INCH.drills().get(place - 1);

        assertThat(drill.label()).isEqualTo(label);
        assertThat(drill.diameter() / 1e6).isCloseTo(millimetres, within(1e-12)); // a double's last digits only
        assertThat(DrillSeries.FRACTIONAL_INCH.drills()).hasSize(64);
    }

    @Test
    void the_series_named_first_is_preferred_where_sizes_coincide() {
        DrillRack metricFirst = DrillRack.of(DrillSeries.METRIC, DrillSeries.FRACTIONAL_INCH);
        DrillRack inchFirst = DrillRack.of(DrillSeries.FRACTIONAL_INCH, DrillSeries.METRIC);

        assertThat(metricFirst.nearestAtLeast(12_700_000).orElseThrow().label()).isEqualTo("12.7 mm");
        assertThat(inchFirst.nearestAtLeast(12_700_000).orElseThrow().label()).isEqualTo("1/2 in");
    }

    @Test
    void nothing_is_found_above_the_largest_drill_and_an_empty_rack_is_refused() {
        assertThat(DrillRack.of(DrillSeries.METRIC).nearestAtLeast(25_000_001)).isEmpty();
        assertThatThrownBy(() -> new DrillRack(List.of()))
                .hasMessageStartingWith("The number of drills (0) of the rack must lie from 1");
    }

    private static List<Long> sizes(DrillSeries series) {
        return series.drills().stream().map(Drill::diameter).toList();
    }
}
