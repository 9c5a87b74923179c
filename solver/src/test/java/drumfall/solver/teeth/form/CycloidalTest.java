// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.teeth.flank.EpicycloidPiece;
import drumfall.solver.teeth.flank.FlankPiece;
import drumfall.solver.teeth.flank.ToothLimitException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CycloidalTest {
    // Addendum factors of BS 978-2:1952, appendix A, recomputed from its formula; four decimals.
    @ParameterizedTest
    @CsvSource({
        "6, 3, 1.3254",
        "6, 4, 1.3473",
        "6, 5, 1.3615",
        "6, 6, 1.3714",
        "6, 7, 1.3787",
        "6, 7.5, 1.3817",
        "6, 8, 1.3843",
        "6, 9, 1.3888",
        "6, 10, 1.3924",
        "6, 12, 1.3980",
        "7, 3, 1.4053",
        "7, 4, 1.4304",
        "7, 5, 1.4466",
        "7, 6, 1.4579",
        "7, 7, 1.4663",
        "7, 8, 1.4727",
        "7, 9, 1.4779",
        "7, 10, 1.4820",
        "7, 12, 1.4884",
        "8, 3, 1.4771",
        "8, 4, 1.5050",
        "8, 5, 1.5230",
        "8, 6, 1.5356",
        "8, 7, 1.5450",
        "8, 7.5, 1.5488",
        "8, 8, 1.5522",
        "8, 9, 1.5579",
        "8, 10, 1.5625",
        "8, 12, 1.5696",
        "9, 3, 1.5426",
        "9, 4, 1.5730",
        "9, 5, 1.5927",
        "9, 6, 1.6065",
        "9, 7, 1.6167",
        "9, 8, 1.6246",
        "9, 9, 1.6309",
        "9, 10, 1.6359",
        "9, 12, 1.6437",
        "10, 3, 1.6030",
        "10, 4, 1.6357",
        "10, 5, 1.6570",
        "10, 6, 1.6719",
        "10, 7, 1.6829",
        "10, 7.5, 1.6874",
        "10, 8, 1.6914",
        "10, 9, 1.6981",
        "10, 10, 1.7036",
        "10, 12, 1.7120",
        "12, 3, 1.7118",
        "12, 4, 1.7487",
        "12, 5, 1.7727",
        "12, 6, 1.7896",
        "12, 7, 1.8020",
        "12, 7.5, 1.8071",
        "12, 8, 1.8117",
        "12, 9, 1.8193",
        "12, 10, 1.8255",
        "12, 12, 1.8350",
        "14, 8, 1.9183",
        "15, 8, 1.9676",
        "16, 8, 2.0147"
    })
    void the_theoretical_addendum_is_the_tabulated_factor(int leafCount, double ratio, double factor) {
        int toothCount = (int) Math.round(leafCount * ratio);
        assertThat(CycloidalWheel.theoreticalAddendum(toothCount, leafCount, Math.PI / 2))
                .isCloseTo(factor, within(5e-5));
    }

    // 0.95 of the factor (BS 978-2:1952, from memory); four decimals.
    @ParameterizedTest
    @CsvSource({"60, 8, 1.4714", "64, 8, 1.4746", "96, 8, 1.4911", "72, 6, 1.3281"})
    void the_practical_addendum_is_the_tabulated_one(int toothCount, int leafCount, double addendum) {
        assertThat(CycloidalPair.customary(toothCount, leafCount).wheel().addendum())
                .isCloseTo(addendum, within(1e-4));
    }

    // P. P. Thornton's chart of addendum allowances: D = m (leaves + allowance); ratio of tooth to space.
    @ParameterizedTest
    @CsvSource({
        "6, 1.71, 0.5",
        "7, 1.71, 0.5",
        "8, 1.71, 0.5",
        "10, 1.61, 0.6667",
        "12, 1.61, 0.6667",
        "16, 1.61, 0.6667"
    })
    void the_customary_leaves_have_the_charts_allowance_and_thickness(int leafCount, double allowance, double split) {
        CycloidalPinion pinion =
                CycloidalPair.customary(8 * leafCount, leafCount).pinion();
        assertThat(2 * pinion.flank().tipRadius()).isCloseTo(leafCount + allowance, within(1e-12));
        double half = pinion.flank().halfAngle(pinion.pitchRadius() * (1 - 1e-9));
        // The chart prints the split as a fraction, here to four places.
        assertThat(half / (Math.PI / leafCount - half)).isCloseTo(split, within(5e-5));
    }

    // E. Beckett, A Rudimentary Treatise on Clocks, Watches and Bells, 8th ed. 1903, pp. 277, 279.
    @Test
    void a_leafs_flank_is_a_straight_radius() {
        FlankPiece flank =
                CycloidalPair.customary(60, 8).pinion().flank().pieces().get(1);
        assertThat(flank.at(0).halfAngle()).isEqualTo(flank.at(1).halfAngle());
        assertThat(flank.at(0.5).radialNormal()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"OGIVE, 8", "SEMI_OGIVE, 8", "ROUND, 8", "OGIVE, 12", "SEMI_OGIVE, 12", "ROUND, 12", "ROUND, 6"})
    void a_rounded_top_leaves_the_flank_without_a_corner_and_ends_on_the_centre_line(LeafTop top, int leafCount) {
        CycloidalPinion pinion =
                CycloidalPair.of(60, leafCount, WheelTop.EPICYCLOID, top).pinion();
        FlankPiece arc = pinion.flank().pieces().get(2);
        assertThat(arc.at(0).radialNormal()).isCloseTo(0, within(1e-12));
        assertThat(arc.at(0).halfAngle()).isCloseTo(pinion.thickness() / leafCount, within(1e-12));
        assertThat(arc.at(1).halfAngle()).isCloseTo(0, within(1e-7));
        assertThat(arc.endRadius()).isCloseTo(leafCount / 2.0 + top.addendum(leafCount), within(1e-12));
    }

    @Test
    void the_single_arc_runs_from_the_pitch_circle_to_a_point_at_the_practical_addendum() {
        CycloidalWheel exact =
                CycloidalPair.of(60, 8, WheelTop.EPICYCLOID, LeafTop.OGIVE).wheel();
        CycloidalWheel arc =
                CycloidalPair.of(60, 8, WheelTop.SINGLE_ARC, LeafTop.OGIVE).wheel();
        assertThat(arc.flank().halfAngle(30)).isCloseTo(exact.flank().halfAngle(30), within(1e-12));
        assertThat(arc.flank().tipHalfAngle()).isCloseTo(0, within(1e-12));
        assertThat(arc.flank().tipRadius()).isCloseTo(exact.flank().tipRadius(), within(1e-12));
    }

    // The single arc stands in for the epicycloid; a twentieth of a module is what one radius for all counts can do.
    // The last tenth of the addendum is left out: there the arcs close to a point, which the epicycloids do not.
    @ParameterizedTest
    @CsvSource({"48, 6", "60, 8", "96, 8", "100, 10", "120, 12"})
    void the_single_arc_follows_the_epicycloid_within_a_twentieth_of_a_module(int toothCount, int leafCount) {
        var exact = CycloidalPair.of(toothCount, leafCount, WheelTop.EPICYCLOID, LeafTop.OGIVE)
                .wheel()
                .flank();
        var arc = CycloidalPair.of(toothCount, leafCount, WheelTop.SINGLE_ARC, LeafTop.OGIVE)
                .wheel()
                .flank();
        double top = toothCount / 2.0 + 0.9 * (exact.tipRadius() - toothCount / 2.0);
        for (double r = toothCount / 2.0; r < top; r += 0.05) {
            assertThat(r * (arc.halfAngle(r) - exact.halfAngle(r)))
                    .as("at %s", r)
                    .isCloseTo(0, within(0.05));
        }
    }

    // Eleven leaves are the fewest that a wheel can carry through a whole pitch after the line of centres (old rule of
    // the trade, from memory). The pinion turns by half the roller's turn while the contact climbs to the wheel's
    // point.
    @ParameterizedTest
    @CsvSource({"8, false", "9, false", "10, false", "11, true", "12, true", "16, true"})
    void from_eleven_leaves_up_the_recess_alone_can_carry_a_pitch(int leafCount, boolean carries) {
        int toothCount = 8 * leafCount;
        double most = CycloidalWheel.theoreticalAddendum(toothCount, leafCount, Math.PI / 2);
        CycloidalWheel wheel =
                new CycloidalWheel(toothCount, leafCount, WheelTop.EPICYCLOID, Math.PI / 2, most, 1.57, 0.1);
        EpicycloidPiece top = (EpicycloidPiece) wheel.flank().pieces().get(2);
        assertThat(top.endTurn() / 2 >= 2 * Math.PI / leafCount).isEqualTo(carries);
    }

    @Test
    void too_few_leaves_are_refused_for_each_form() {
        assertThatThrownBy(() -> CycloidalPair.customary(60, 5))
                .isInstanceOf(ToothLimitException.class)
                .hasMessageContaining("must be at least 6. Maybe take 6.");
        assertThatThrownBy(() -> LanternPair.of(60, 5, 1.4, 1.1, 0.1))
                .hasMessage("The leafCount of a lantern pinion (5) must be at least 6. Maybe take 6.");
        assertThat(LanternPair.of(60, 6, 1.2, 1.05, 0.1).pinion().leafCount()).isEqualTo(6);
    }

    @Test
    void an_addendum_past_the_point_is_refused_and_the_named_one_works() {
        assertThatThrownBy(() -> new CycloidalWheel(60, 8, WheelTop.EPICYCLOID, Math.PI / 2, 1.6, 1.57, 0.2))
                .hasMessageContaining("addendum of a cycloidal wheel of 60 (1.6000) must be at most 1.5488 modules");
        double most = CycloidalWheel.theoreticalAddendum(60, 8, Math.PI / 2);
        CycloidalWheel pointed = new CycloidalWheel(60, 8, WheelTop.EPICYCLOID, Math.PI / 2, most, 1.57, 0.2);
        assertThat(pointed.flank().tipHalfAngle()).isCloseTo(0, within(1e-9));
    }

    @Test
    void a_fillet_without_room_is_refused_and_the_named_one_works() {
        ToothLimitException refused = catchThrowableOfType(
                ToothLimitException.class, () -> new CycloidalPinion(8, Math.PI / 3, 0.855, 1.9, 2));
        CycloidalPinion round = new CycloidalPinion(8, Math.PI / 3, 0.855, 1.9, refused.nearest());
        // A full round root: the fillets of neighbouring leaves meet in the middle of the space.
        assertThat(round.flank().rootHalfAngle()).isCloseTo(Math.PI / 8, within(1e-12));
    }

    // E. Beckett, the same, pp. 279-281: lantern pins may not drive.
    @Test
    void a_lantern_pinion_may_not_drive() {
        LanternPair pair = LanternPair.of(60, 8, 1.4, 1.1, 0.1);
        assertThatThrownBy(() -> new MeshPair(pair.pinion(), pair.wheel(), 34))
                .hasMessageContaining("must be one that may drive");
        assertThat(pair.mesh().follower()).isEqualTo(pair.pinion());
    }

    @Test
    void a_lantern_wheel_is_as_far_from_the_bare_epicycloid_as_the_pins_radius() {
        LanternWheel wheel = LanternPair.of(60, 8, 1.4, 1.1, 0.1).wheel();
        LanternWheel bare = LanternPair.of(60, 8, 0, 1.1, 0).wheel();
        FlankPiece set = wheel.flank().pieces().get(2);
        for (double share = 0; share <= 1; share += 0.125) {
            var p = set.at(share);
            double angle = p.halfAngle() + Math.asin(p.radialNormal());
            // Stepping out along the normal by the pin's radius must land on the bare curve.
            double x = p.radius() * Math.cos(p.halfAngle()) + 0.7 * normalX(p.halfAngle(), p.radialNormal());
            double y = p.radius() * Math.sin(p.halfAngle()) + 0.7 * normalY(p.halfAngle(), p.radialNormal());
            assertThat(Math.atan2(y, x))
                    .as("at %s, lean %s", share, angle)
                    .isCloseTo(bare.flank().pieces().get(1).halfAngle(Math.hypot(x, y)), within(1e-10));
        }
    }

    private static double normalX(double angle, double radial) {
        return radial * Math.cos(angle) - Math.sqrt(1 - radial * radial) * Math.sin(angle);
    }

    private static double normalY(double angle, double radial) {
        return radial * Math.sin(angle) + Math.sqrt(1 - radial * radial) * Math.cos(angle);
    }
}
