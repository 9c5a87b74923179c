// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.teeth.contact.ContactBand;
import drumfall.solver.teeth.contact.MeshConditions;
import drumfall.solver.teeth.contact.MeshTracer;
import drumfall.solver.teeth.contact.PathCache;
import drumfall.solver.teeth.contact.Sampling;
import drumfall.solver.teeth.form.BasicRack;
import drumfall.solver.teeth.form.CycloidalPair;
import drumfall.solver.teeth.form.CycloidalPinion;
import drumfall.solver.teeth.form.InvoluteGear;
import drumfall.solver.teeth.form.InvolutePair;
import drumfall.solver.teeth.form.MeshPair;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FormChooserTest {
    private static final ContactBand.Errors BAND = new ContactBand.Errors(-0.05, 0.08, 0.08, 0.15);

    private static MeshNeed need(int driver, int follower) {
        // Module 2 mm, extrusions of 0.42 mm, a nozzle of 0.4 mm.
        return new MeshNeed(driver, follower, 0.3, BAND, 1.1, 0.21, 0.1);
    }

    private static double worst(MeshPair pair) {
        return ContactBand.of(pair, BAND, 0.3, Sampling.SWIFT, new PathCache(16)).all().stream()
                .mapToDouble(c -> c.worstTorque())
                .min()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"60, 8", "64, 8", "72, 10"})
    void a_chosen_involute_beats_the_undercut_free_one_at_its_worst_phase(int driver, int follower) {
        ChosenMesh chosen = FormChooser.free(new PathCache(64))
                .choose(need(driver, follower), ToothFamily.INVOLUTE)
                .orElseThrow();
        double shift = InvoluteGear.leastShift(BasicRack.ISO_53_A, follower);
        MeshPair usual = InvolutePair.of(BasicRack.ISO_53_A, driver, follower, -shift, shift)
                .mesh();
        assertThat(chosen.worstTorque()).isGreaterThan(worst(usual) + 0.05);
    }

    @Test
    void a_chosen_involute_meets_contact_ratio_clearance_and_print_limits_over_its_band() {
        ChosenMesh chosen = FormChooser.free(new PathCache(64))
                .choose(need(60, 8), ToothFamily.INVOLUTE)
                .orElseThrow();
        chosen.band().all().forEach(c -> {
            assertThat(c.path().clearances().driverTip()).isPositive();
            assertThat(c.path().clearances().followerTip()).isPositive();
            assertThat(c.path().clearances().rootTouched()).isFalse();
            assertThat(c.path().contactRatio()).isGreaterThan(1.1 - 1e-4);
        });
    }

    @Test
    void a_fixed_figure_stays_as_the_brief_wants_it() {
        InvoluteFreedom fixed = new InvoluteFreedom(
                List.of(20.0), Range.fixed(0.5), Range.fixed(0), new Range(0.1, 1.8), new Range(0.1, 1.8));
        FormChooser chooser = new FormChooser(fixed, CycloidalFreedom.FREE, LanternFreedom.FREE, new PathCache(64));
        ChosenMesh chosen = chooser.choose(need(60, 8), ToothFamily.INVOLUTE).orElseThrow();
        InvoluteGear pinion = (InvoluteGear) chosen.pair().follower();
        assertThat(pinion.shift()).isEqualTo(0.5);
        assertThat(Math.toDegrees(pinion.rack().pressureAngle())).isCloseTo(20, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"60, 8", "72, 12"})
    void a_chosen_cycloidal_pair_is_not_worse_than_the_customary_one(int driver, int follower) {
        ChosenMesh chosen = FormChooser.free(new PathCache(512))
                .choose(need(driver, follower), ToothFamily.CYCLOIDAL)
                .orElseThrow();
        MeshPair customary = CycloidalPair.customary(driver, follower).wheelDriving();
        assertThat(chosen.worstTorque()).isGreaterThan(worst(customary));
        assertThat(chosen.pair().follower()).isInstanceOf(CycloidalPinion.class);
    }

    // A search for torque alone would cut the wheel so low that its corner scrapes the leaf.
    @ParameterizedTest
    @EnumSource(ToothFamily.class)
    void what_is_chosen_carries_on_its_flanks_as_drawn(ToothFamily family) {
        ChosenMesh chosen =
                FormChooser.free(new PathCache(64)).choose(need(60, 8), family).orElseThrow();
        assertThat(chosen.band().nominal().path().cornerShare()).isLessThanOrEqualTo(1e-3);
    }

    @Test
    void where_the_pinion_drives_there_is_no_lantern_but_the_other_forms_remain() {
        List<ChosenMesh> ranked =
                FormChooser.free(new PathCache(512)).ranked(need(12, 36), EnumSet.allOf(ToothFamily.class));
        assertThat(ranked)
                .extracting(ChosenMesh::family)
                .doesNotContain(ToothFamily.LANTERN)
                .isNotEmpty();
        assertThat(ranked).isSortedAccordingTo((a, b) -> Double.compare(b.worstTorque(), a.worstTorque()));
    }

    @ParameterizedTest
    @EnumSource(ToothFamily.class)
    void teeth_too_small_to_print_leave_no_choice(ToothFamily family) {
        MeshNeed fine = new MeshNeed(60, 8, 0.3, BAND, 1.1, 1.2, 0.1);
        assertThat(FormChooser.free(new PathCache(512)).choose(fine, family)).isEmpty();
    }

    @Test
    void the_same_question_gets_the_same_answer_without_another_search() {
        FormChooser chooser = FormChooser.free(new PathCache(64));
        ChosenMesh first = chooser.choose(need(60, 8), ToothFamily.INVOLUTE).orElseThrow();
        assertThat(chooser.choose(need(60, 8), ToothFamily.INVOLUTE).orElseThrow())
                .isSameAs(first);
    }

    // The closed form that guides the search against the general method that judges the result.
    @Test
    void the_closed_forms_worst_phase_is_the_general_methods() {
        InvolutePair pair = InvolutePair.of(BasicRack.ISO_53_A, 60, 10, -0.45, 0.45);
        for (double error : new double[] {-0.03, 0, 0.08}) {
            double general = MeshTracer.trace(pair.mesh(), MeshConditions.centreOff(error), Sampling.EXACT)
                    .withFriction(0.3)
                    .worst();
            assertThat(pair.worstEfficiency(0.3, pair.centreDistance() + error)).isCloseTo(general, within(1e-9));
        }
    }

    @Test
    void arguments_out_of_range_are_refused() {
        assertThatThrownBy(() -> new MeshNeed(60, 4, 0.3, BAND, 1.1, 0.21, 0.1)).hasMessageContaining("at least 5");
        assertThatThrownBy(() -> new MeshNeed(60, 8, 30, BAND, 1.1, 0.21, 0.1)).hasMessageContaining("coefficient");
        assertThatThrownBy(() -> new Range(1, 0)).hasMessageContaining("in order");
        assertThatThrownBy(() -> new ContactBand.Errors(0.1, 0.2, 0, 0)).hasMessageContaining("nominal");
    }
}
