// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.teeth.flank.FlankPiece;
import drumfall.solver.teeth.flank.ToothLimitException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InvoluteTest {
    /** The worked example's module, mm. */
    private static final double MODULE = 3;

    private static final BasicRack RACK = BasicRack.ISO_53_A;

    // tan a - a, seven decimals; half a unit of the last place.
    @ParameterizedTest
    @CsvSource({
        "10, 0.0017941",
        "14.5, 0.0055448",
        "15, 0.0061498",
        "20, 0.0149044",
        "22.5, 0.0215145",
        "25, 0.0299753",
        "30, 0.0537515",
        "35, 0.0893423",
        "40, 0.1409679"
    })
    void the_involute_function_gives_the_tabulated_value_and_back(double degrees, double value) {
        double angle = Math.toRadians(degrees);
        assertThat(Involute.of(angle)).isCloseTo(value, within(5e-8));
        assertThat(Involute.inverse(Involute.of(angle))).isCloseTo(angle, within(1e-13));
    }

    // "Calculation of Positive Shifted Gear", KHK, Gear Technical Reference (read on a secondary page):
    // m 3, 20 degrees, z 12/24, x 0.6/0.36. Printed to the digits shown, so half a unit of the last place.
    @Test
    void the_worked_example_of_a_shifted_pair_comes_out_from_its_shifts() {
        InvolutePair pair = InvolutePair.of(RACK, 12, 24, 0.6, 0.36);
        assertThat(Involute.of(pair.workingAngle())).isCloseTo(0.034316, within(5e-7));
        assertThat(Math.toDegrees(pair.workingAngle())).isCloseTo(26.0886, within(5e-5));
        assertThat(pair.centreDistance() * MODULE).isCloseTo(56.4999, within(5e-5));
        assertThat(pair.centreDistance() - 18).isCloseTo(0.83329, within(5e-6));
        assertThat(pair.contactRatio()).isCloseTo(1.202, within(5e-4));
    }

    // The same example worked backwards from the centre distance 56.5 mm.
    @Test
    void the_worked_example_comes_out_from_its_centre_distance() {
        double sum = InvolutePair.shiftSum(RACK, 12, 24, 56.5 / MODULE);
        assertThat(sum).isCloseTo(0.9600, within(1e-4));
        InvolutePair pair = InvolutePair.of(RACK, 12, 24, 0.6, sum - 0.6);
        assertThat(Involute.of(pair.workingAngle())).isCloseTo(0.034317, within(5e-7));
        assertThat(Math.toDegrees(pair.workingAngle())).isCloseTo(26.0888, within(5e-5));
        assertThat(pair.centreDistance() - 18).isCloseTo(0.83333, within(5e-6));
    }

    // Columns: gear, d, d_b, d_w, h_a, d_a, d_f of the same example, mm. The example rounds y to 0.8333,
    // so diameters built on it may differ by 3 * 2 * 4e-5 mm.
    @ParameterizedTest
    @CsvSource({
        "true, 36.000, 33.8289, 37.667, 4.420, 44.840, 32.100",
        "false, 72.000, 67.6579, 75.333, 3.700, 79.400, 66.660"
    })
    void the_worked_examples_diameters_are_reproduced(
            boolean first, double d, double db, double dw, double ha, double da, double df) {
        InvolutePair pair = InvolutePair.of(RACK, 12, 24, 0.6, 0.36);
        InvoluteGear gear = first ? pair.driver() : pair.follower();
        assertThat(2 * gear.pitchRadius() * MODULE).isCloseTo(d, within(5e-4));
        assertThat(2 * gear.baseRadius() * MODULE).isCloseTo(db, within(5e-5));
        assertThat(2 * pair.centreDistance() * gear.toothCount() / 36 * MODULE).isCloseTo(dw, within(5e-4));
        assertThat((gear.tipRadius() - gear.pitchRadius()) * MODULE).isCloseTo(ha, within(5e-4));
        assertThat(2 * gear.tipRadius() * MODULE).isCloseTo(da, within(5e-4));
        assertThat(2 * gear.rootRadius() * MODULE).isCloseTo(df, within(5e-4));
        assertThat((gear.tipRadius() - gear.rootRadius()) * MODULE).isCloseTo(6.370, within(5e-4));
    }

    // Recess 0.7264 and approach 0.4757 of the example, recomputed from its formula.
    @Test
    void the_worked_examples_contact_ratio_splits_at_the_pitch_point() {
        InvolutePair pair = InvolutePair.of(RACK, 12, 24, 0.6, 0.36);
        assertThat(pair.recessRatio(pair.centreDistance())).isCloseTo(0.7264, within(1e-4));
        assertThat(pair.approachRatio(pair.centreDistance())).isCloseTo(0.4757, within(1e-4));
    }

    // 2 / sin^2 a, standard in all handbooks (from memory, recomputed); two decimals.
    @ParameterizedTest
    @CsvSource({"14.5, 31.90", "20, 17.10", "22.5, 13.66", "25, 11.20"})
    void the_undercut_limit_is_the_handbooks(double degrees, double limit) {
        double angle = Math.toRadians(degrees);
        BasicRack rack = new BasicRack(angle, 1, 1 + 0.25 * (1 - Math.sin(angle)), 0.25);
        int above = (int) Math.ceil(limit);
        assertThat(InvoluteGear.of(rack, above, 0).isUndercut()).isFalse();
        assertThat(InvoluteGear.of(rack, above - 1, 0).isUndercut()).isTrue();
        double perTooth = InvoluteGear.leastShift(rack, 0) - InvoluteGear.leastShift(rack, 1);
        assertThat(rack.straightDepth() / perTooth).isCloseTo(limit, within(5e-3));
    }

    // x_min = 1 - z sin^2 a / 2 at 20 degrees (DIN 3960, from memory; rows recomputed); four decimals.
    // The rounding 0.38 is itself rounded, which moves the straight depth by 4.0e-5 modules.
    @ParameterizedTest
    @CsvSource({"6, 0.6491", "7, 0.5906", "8, 0.5321", "10, 0.4151", "12, 0.2981", "14, 0.1812", "16, 0.0642"})
    void the_least_shift_without_undercut_is_the_tabulated_one(int count, double shift) {
        assertThat(InvoluteGear.leastShift(RACK, count)).isCloseTo(shift, within(1e-4));
    }

    // m 2, z 20: W_3 15.3209, W_4 21.2251 mm, difference the base pitch 5.904263 (course notes "Mot Spur Gear").
    @ParameterizedTest
    @CsvSource({"3, 15.3209", "4, 21.2251"})
    void the_span_measurement_is_the_published_one(int spanned, double span) {
        assertThat(2 * InvoluteGear.of(RACK, 20, 0).span(spanned)).isCloseTo(span, within(5e-5));
    }

    // Standard pairs by the textbook formula, without undercut allowance; five decimals.
    @ParameterizedTest
    @CsvSource({"20, 40, 1.63519", "20, 80, 1.69129", "24, 24, 1.60190"})
    void the_contact_ratio_of_standard_pairs_is_the_formulas(int driver, int follower, double ratio) {
        assertThat(InvolutePair.of(RACK, driver, follower, 0, 0).contactRatio()).isCloseTo(ratio, within(1e-5));
    }

    // The same formula prints 1.63413 for 12/96 and 1.59761 for 10/80; both pinions are undercut.
    @ParameterizedTest
    @CsvSource({"12, 96, 1.63413", "10, 80, 1.59761"})
    void undercut_costs_contact_ratio_that_the_plain_formula_does_not_see(int driver, int follower, double ratio) {
        assertThat(InvolutePair.of(RACK, driver, follower, 0, 0).contactRatio()).isBetween(1.0, ratio - 0.05);
    }

    // SDP/SI, Elements of Metric Gear Technology, table 10-2: rack of module 3, s 4.7124 mm, h_a 3.0000 mm.
    @Test
    void a_very_large_gear_is_as_thick_as_the_rack() {
        InvoluteGear gear = InvoluteGear.of(RACK, 100_000, 0);
        double half = gear.flank().halfAngle(gear.pitchRadius());
        assertThat(2 * half * gear.pitchRadius() * MODULE).isCloseTo(4.7124, within(5e-5));
        assertThat((gear.tipRadius() - gear.pitchRadius()) * MODULE).isCloseTo(3.0, within(5e-5));
    }

    @ParameterizedTest
    @CsvSource({
        "6, 0",
        "8, 0",
        "11, 0.32085",
        "8, 0.532",
        "8, 0.3",
        "8, 0.53",
        "12, 0",
        "17, 0",
        "18, 0",
        "60, -0.53",
        "120, 0.2"
    })
    void trochoid_and_involute_join_in_one_flank(int count, double shift) {
        InvoluteGear gear = new InvoluteGear(RACK, count, shift, count / 2.0 + 0.6 + shift);
        FlankPiece root = gear.flank().pieces().get(0);
        FlankPiece working = gear.flank().pieces().get(1);
        // Both are solved to 1e-14 of their parameters.
        assertThat(root.at(1).halfAngle()).isCloseTo(working.at(0).halfAngle(), within(1e-12));
        if (!gear.isUndercut()) {
            assertThat(root.at(1).radialNormal()).isCloseTo(working.at(0).radialNormal(), within(1e-6));
        }
        assertThat(gear.flank().rootRadius()).isCloseTo(gear.rootRadius(), within(1e-12));
    }

    @Test
    void an_impossible_shift_is_refused_with_the_nearest_that_works() {
        assertThatThrownBy(() -> InvoluteGear.of(RACK, 20, 0.95))
                .isInstanceOf(ToothLimitException.class)
                .hasMessageContaining("shift of an involute gear of 20 (0.9500) must be at most 0.8690 modules")
                .hasMessageContaining("Maybe take 0.8690");
        assertThat(InvoluteGear.of(RACK, 20, 0.869).shift()).isEqualTo(0.869);
    }

    @Test
    void a_pointed_tip_is_refused_and_the_named_tip_radius_works() {
        ToothLimitException refused =
                catchThrowableOfType(ToothLimitException.class, () -> InvoluteGear.of(RACK, 8, 0.8));
        InvoluteGear gear = new InvoluteGear(RACK, 8, 0.8, refused.nearest());
        assertThat(gear.flank().tipHalfAngle()).isCloseTo(0, within(1e-9));
    }

    @Test
    void too_few_teeth_are_refused() {
        assertThatThrownBy(() -> InvoluteGear.of(RACK, 4, 0.5))
                .hasMessage("The leafCount of an involute pinion (4) must be at least 5. Maybe take 5.");
        assertThat(new InvoluteGear(RACK, 5, 0.5, 3.8).toothCount()).isEqualTo(5);
    }

    @Test
    void a_shift_sum_without_working_angle_is_refused() {
        assertThatThrownBy(() -> InvolutePair.of(RACK, 12, 12, -0.3, -0.3)).hasMessageContaining("sum of shifts");
    }

    @Test
    void a_rack_rounded_for_a_nozzle_keeps_its_straight_flank() {
        BasicRack rack = RACK.roundedFor(0.44);
        assertThat(rack.rounding()).isEqualTo(0.44);
        assertThat(rack.straightDepth()).isCloseTo(RACK.straightDepth(), within(1e-12));
        assertThat(RACK.roundedFor(0.2)).isEqualTo(RACK);
        assertThatThrownBy(() -> RACK.roundedFor(0.6)).hasMessageContaining("rounding of the rack");
    }

    // ISO 54:1996 by way of a secondary page; the count and sum stand in for the printed list.
    @Test
    void the_preferred_modules_are_two_series_of_eighteen_in_rising_order() {
        assertThat(ModuleSeries.FIRST).hasSize(18).isSorted().contains(1.0, 1.25, 1.5, 2.5, 50.0);
        assertThat(ModuleSeries.SECOND).hasSize(18).isSorted().doesNotContainAnyElementsOf(ModuleSeries.FIRST);
    }
}
