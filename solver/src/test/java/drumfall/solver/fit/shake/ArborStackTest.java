// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fit.shake;

import static drumfall.solver.fit.shake.Direction.FILLS;
import static drumfall.solver.fit.shake.Direction.OPENS;
import static drumfall.solver.fit.shake.Stacks.MIL;
import static drumfall.solver.fit.shake.Stacks.part;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.fit.FitException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArborStackTest {
    // Ficient Design, "Tolerance Stack-Up Analysis": housing 4.020 ± 0.005 in less 2.000 ± 0.005, 1.500 ± 0.003
    // and 0.500 ± 0.002 in: gap 0.020 ± 0.015 in, root-sum-square ± 0.00794 in, printed to five decimals.
    @Test
    void three_parts_in_a_housing_stack_up_as_published() {
        ArborStack stack = new ArborStack(
                "housing",
                List.of(
                        part("housing", OPENS, 4020 * MIL, 5 * MIL),
                        part("long", FILLS, 2000 * MIL, 5 * MIL),
                        part("middle", FILLS, 1500 * MIL, 3 * MIL),
                        part("short", FILLS, 500 * MIL, 2 * MIL)));

        assertThat(stack.nominal()).isEqualTo(20 * MIL);
        assertThat(stack.least()).isEqualTo(5 * MIL);
        assertThat(stack.most()).isEqualTo(35 * MIL);
        assertThat(stack.rootSumSquare().halfWidth() / MIL).isCloseTo(7.94, within(0.005)); // half of the last place
        assertThat(stack.rootSumSquare().least() / MIL).isCloseTo(12, within(0.5)); // printed 0.012 in
        assertThat(stack.rootSumSquare().most() / MIL).isCloseTo(28, within(0.5)); // printed 0.028 in
    }

    // Shigley, Mechanical Engineering Design, 9th ed., example 1-7, from memory: bolt 1.750 ± 0.003 in over
    // 0.750 ± 0.001, 0.120 ± 0.005 and 0.875 ± 0.001 in: gap 0.005 ± 0.010 in, statistically ± 0.006 in.
    @Test
    void a_shouldered_screw_may_bind_in_the_worst_case_but_hardly_ever_does() {
        ArborStack stack = new ArborStack(
                "screw",
                List.of(
                        part("screw", OPENS, 1750 * MIL, 3 * MIL),
                        part("first", FILLS, 750 * MIL, MIL),
                        part("washer", FILLS, 120 * MIL, 5 * MIL),
                        part("second", FILLS, 875 * MIL, MIL)));

        assertThat(stack.nominal()).isEqualTo(5 * MIL);
        assertThat(stack.least()).isEqualTo(-5 * MIL);
        assertThat(stack.most()).isEqualTo(15 * MIL);
        assertThat(stack.rootSumSquare().halfWidth()).isCloseTo(6.0 * MIL, within(1e-6)); // √(9+1+25+1) = 6
    }

    @Test
    void a_lopsided_tolerance_moves_the_mean_to_its_middle_and_turns_round_in_a_part_that_fills() {
        Contribution pillar = new Contribution(
                "pillar", OPENS, 50_000_000, 100_000, 350_000, 1, 0, ErrorShape.UNIFORM, Optional.empty());
        Contribution washers =
                new Contribution("washer", FILLS, 1_000_000, 0, 50_000, 4, 0, ErrorShape.UNIFORM, Optional.empty());
        ArborStack stack = new ArborStack("arbor", List.of(pillar, washers));

        assertThat(stack.nominal()).isEqualTo(46_000_000);
        assertThat(stack.least()).isEqualTo(46_000_000 - 100_000 - 4 * 50_000);
        assertThat(stack.most()).isEqualTo(46_000_000 + 350_000);
        assertThat(stack.mean()).isEqualTo(46_025_000);
        assertThat(stack.rootSumSquare().halfWidth())
                .isCloseTo(Math.sqrt(5.0625e10 + 4 * 6.25e8), within(1e-6)); // rounding
    }

    // α of PLA 41e-6/K is a maker's data sheet value (Materials Science-Poland, doi 10.2478/msp-2025-0039); of
    // steel 11.5e-6/K from memory. By hand: 50 mm · 41e-6 − 49.5 mm · 11.5e-6 = 2.05 − 0.56925 µm/K.
    @Test
    void plastic_pillars_outgrow_a_steel_arbor() {
        Contribution pillar =
                new Contribution("pillar", OPENS, 50_000_000, 0, 0, 1, 41e-6, ErrorShape.UNIFORM, Optional.empty());
        Contribution arbor =
                new Contribution("arbor", FILLS, 49_500_000, 0, 0, 1, 11.5e-6, ErrorShape.UNIFORM, Optional.empty());

        assertThat(new ArborStack("arbor", List.of(pillar, arbor)).drift())
                .isCloseTo(1480.75, within(1e-9)); // nm/K, rounding
    }

    // P(|Z| < z) of the normal distribution: Abramowitz and Stegun, table 26.1, to the digits here; √3 computed
    // to 12 digits.
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "1, 0.682689492137",
        "1.95996398454, 0.95",
        "2, 0.954499736104",
        "3, 0.997300203937",
        "1.7320508075688772, 0.916735483336",
        "5, 0.999999426697",
        "9, 1",
    })
    void the_normal_distribution_has_its_tabled_values(double z, double within) {
        assertThat(Normal.within(z)).isCloseTo(within, within(5e-13)); // half of the last digit given
    }

    @Test
    void uniform_errors_leave_a_root_sum_square_covering_ninety_two_in_a_hundred() {
        assertThat(Stacks.ofErrors(ErrorShape.UNIFORM, 3, 1, 5, 1)
                        .rootSumSquare()
                        .coverage())
                .isCloseTo(0.9167, within(0.00005)); // P(|Z| < √3), four digits
        assertThat(Stacks.ofErrors(ErrorShape.TRUNCATED_NORMAL, 3, 1, 5, 1)
                        .rootSumSquare()
                        .coverage())
                .isBetween(0.9973, 0.998); // three deviations; the cut makes each deviation a little smaller
        assertThat(Stacks.ofErrors(ErrorShape.UNIFORM, 0).rootSumSquare().coverage())
                .isEqualTo(1);
    }

    @Test
    void a_stack_without_a_frame_or_with_a_bad_part_is_refused() {
        assertThatThrownBy(() -> new ArborStack("third", List.of(part("wheel", FILLS, 5_000_000, 0))))
                .isInstanceOf(FitException.class)
                .hasMessage("The frame gap (none) of the stack of arbor (third) must be at least 1 part."
                        + " Maybe add the pillars.");
        assertThatThrownBy(() -> new ArborStack("third", List.of())).hasMessageContaining("The number of parts (0)");
        assertThatThrownBy(() -> part("wheel", FILLS, 1_000_000, 1_000_001))
                .hasMessageContaining("The minus tolerance (1.000001 mm) of part (wheel) must lie from 0 mm to 1 mm");
        assertThatThrownBy(() -> part("wheel", FILLS, 1_000_000, 0, 0, ErrorShape.UNIFORM))
                .hasMessage("The count (0) of part (wheel) must lie from 1 to 1000. Maybe take 1.");
        assertThatThrownBy(() ->
                        new Contribution("wheel", FILLS, 1, 0, 0, 1, Double.NaN, ErrorShape.UNIFORM, Optional.empty()))
                .hasMessageContaining("The expansion (NaN 1/K) of part (wheel)");
        assertThatThrownBy(() -> new ShakeBand(1_000_000, 1_000_000))
                .hasMessageContaining("The most end shake (1 mm) of the wanted band must lie from 1.000001 mm");
        assertThatThrownBy(() -> new Temperatures(20, 21, 30)).hasMessageContaining("coldest temperature");
        assertThatThrownBy(() -> new Sampling(1, 101, true)).hasMessageContaining("must be even. Maybe take 102.");
    }
}
