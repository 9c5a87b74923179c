// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.teeth.form.BasicRack;
import drumfall.solver.teeth.form.CycloidalPair;
import drumfall.solver.teeth.form.InvolutePair;
import drumfall.solver.teeth.form.LanternPair;
import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.teeth.form.LanternWheel;
import drumfall.solver.teeth.form.LeafTop;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.teeth.form.WheelTop;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The general method against closed forms it does not use. */
class ClosedFormTest {
    private static final BasicRack RACK = BasicRack.ISO_53_A;

    /**
     * The textbook's instantaneous efficiency of an involute pair.
     *
     * <p>The force acts along the line of action; friction adds its moment about each centre with the distance of the
     * contact from that gear's base tangent point as lever: {@code (r_b2 -+ mu s_2) / (r_b1 -+ mu s_1) * r_b1 / r_b2}.
     */
    private static double involuteEfficiency(InvolutePair pair, double fromDriverTangent, double friction) {
        double length = pair.centreDistance() * Math.sin(pair.workingAngle());
        double rb1 = pair.driver().baseRadius();
        double rb2 = pair.follower().baseRadius();
        double s1 = fromDriverTangent;
        double s2 = length - fromDriverTangent;
        double sign = s1 < length * rb1 / (rb1 + rb2) ? -1 : 1;
        return (rb2 + sign * friction * s2) / (rb1 + sign * friction * s1) * rb1 / rb2;
    }

    // The general method solves for the contact to 1e-13 of a flank piece; 1e-6 leaves room for steep ends.
    @ParameterizedTest
    @CsvSource({
        "20, 40, 0, 0",
        "60, 8, -0.53, 0.53",
        "8, 60, 0.53, -0.53",
        "12, 24, 0.6, 0.36",
        "30, 30, 0, 0",
        "120, 8, 0, 0.55"
    })
    void an_involutes_efficiency_is_the_closed_forms_along_the_whole_path(
            int driver, int follower, double x1, double x2) {
        InvolutePair pair = InvolutePair.of(RACK, driver, follower, x1, x2);
        for (double friction : new double[] {0, 0.1, 0.3}) {
            MeshContact contact = MeshTracer.trace(pair.mesh(), MeshConditions.NOMINAL, Sampling.EXACT)
                    .withFriction(friction);
            for (ContactSample sample : contact.samples()) {
                for (Contact touch : sample.contacts()) {
                    double base = pair.driver().baseRadius();
                    double along = Math.sqrt(Math.pow(touch.driverRadius(), 2) - base * base);
                    assertThat(touch.efficiency(friction))
                            .isCloseTo(involuteEfficiency(pair, along, friction), within(1e-6));
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"20, 40, 0, 0", "12, 24, 0.6, 0.36", "30, 30, 0, 0", "60, 10, -0.45, 0.45"})
    void an_involutes_contact_ratio_ripple_and_worst_phase_are_the_closed_forms(
            int driver, int follower, double x1, double x2) {
        InvolutePair pair = InvolutePair.of(RACK, driver, follower, x1, x2);
        ContactPath path = MeshTracer.trace(pair.mesh(), MeshConditions.NOMINAL, Sampling.EXACT);
        // Ends of the path are located to 1e-12 of a pitch.
        assertThat(path.contactRatio()).isCloseTo(pair.contactRatio(), within(1e-9));
        double approach = pair.approachRatio(pair.centreDistance());
        assertThat(path.approachAngle() / path.driverPitch()).isCloseTo(approach, within(1e-9));
        assertThat(path.ripple()).isCloseTo(0, within(1e-9));
        double length = pair.centreDistance() * Math.sin(pair.workingAngle());
        double pitchPoint = length * driver / (driver + follower);
        double basePitch = Math.PI * Math.cos(RACK.pressureAngle());
        double start = involuteEfficiency(pair, pitchPoint - approach * basePitch, 0.2);
        double end = involuteEfficiency(pair, pitchPoint + (pair.contactRatio() - approach) * basePitch, 0.2);
        assertThat(path.withFriction(0.2).worst()).isCloseTo(Math.min(start, end), within(1e-7));
    }

    // Involutes stay conjugate at any centre distance; the contact ratio is the closed form's at that distance.
    @ParameterizedTest
    @ValueSource(doubles = {-0.02, 0.05, 0.15})
    void an_involute_off_its_centre_distance_keeps_its_ratio(double error) {
        InvolutePair pair = InvolutePair.of(RACK, 24, 36, 0, 0);
        ContactPath path = MeshTracer.trace(pair.mesh(), MeshConditions.centreOff(error), Sampling.EXACT);
        assertThat(path.ripple()).isCloseTo(0, within(1e-9));
        assertThat(path.contactRatio()).isCloseTo(pair.contactRatio(pair.centreDistance() + error), within(1e-9));
    }

    // Backlash from the tooth thicknesses on the working pitch circles, ISO 21771 (from memory):
    // j = p_w - s_w1 - s_w2, here as play of the follower along its own pitch circle; constant for an involute.
    @ParameterizedTest
    @CsvSource({"24, 36, 0, 0", "60, 10, -0.45, 0.45", "12, 24, 0.6, 0.36"})
    void an_involutes_backlash_off_its_centre_distance_is_the_closed_forms(int z1, int z2, double x1, double x2) {
        InvolutePair pair = InvolutePair.of(RACK, z1, z2, x1, x2);
        for (double error : new double[] {0, 0.02, 0.1}) {
            double a = pair.centreDistance() + error;
            double r1 = a * z1 / (z1 + z2);
            double r2 = a * z2 / (z1 + z2);
            double thick = 2 * r1 * pair.driver().flank().halfAngle(r1)
                    + 2 * r2 * pair.follower().flank().halfAngle(r2);
            double play = (2 * Math.PI * r1 / z1 - thick) / r2 * pair.follower().pitchRadius();
            Clearances found = MeshTracer.trace(pair.mesh(), MeshConditions.centreOff(error), Sampling.EXACT)
                    .clearances();
            assertThat(found.leastBacklash()).isCloseTo(play, within(1e-9));
            assertThat(found.greatestBacklash()).isCloseTo(play, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"60, 8", "72, 6", "64, 8", "96, 12", "120, 10", "24, 16"})
    void an_exact_epicycloid_on_a_radial_leaf_keeps_its_ratio_in_recess(int toothCount, int leafCount) {
        MeshPair pair = CycloidalPair.of(toothCount, leafCount, WheelTop.EPICYCLOID, LeafTop.customary(leafCount))
                .wheelDriving();
        int seen = 0;
        ContactPath path = MeshTracer.trace(pair, MeshConditions.NOMINAL, Sampling.EXACT);
        for (ContactSample sample : path.withFriction(0).samples()) {
            for (Contact touch : sample.contacts()) {
                if (!touch.isApproach() && touch.touch() == Touch.FLANKS) {
                    assertThat(touch.speedRatio()).isCloseTo(pair.ratio(), within(1e-9 * pair.ratio()));
                    seen++;
                }
            }
        }
        assertThat(seen).isGreaterThan(30);
    }

    // The contact of an epicycloid and a radius lies on the rolling circle: at angle t of the roller the common normal
    // makes t/2 with the line of centres' perpendicular. Levers: R cos(t/2) and r cos(t/2), r = 2 q.
    @ParameterizedTest
    @CsvSource({"60, 8", "72, 6", "96, 12"})
    void an_exact_epicycloids_efficiency_is_the_closed_forms_in_recess(int toothCount, int leafCount) {
        MeshPair pair = CycloidalPair.customary(toothCount, leafCount).wheelDriving();
        double friction = 0.2;
        double wheel = toothCount / 2.0;
        double pinion = leafCount / 2.0;
        for (ContactSample sample : MeshTracer.trace(pair, MeshConditions.NOMINAL, Sampling.EXACT)
                .withFriction(friction)
                .samples()) {
            for (Contact touch : sample.contacts()) {
                if (!touch.isApproach() && touch.touch() == Touch.FLANKS) {
                    double half = Math.acos(touch.followerRadius() / pinion);
                    // Distance of the contact from the pitch point along the common normal.
                    double along = pinion * Math.sin(half);
                    double arm1 = wheel * Math.cos(half);
                    double arm2 = pinion * Math.cos(half);
                    double drag1 = along + wheel * Math.sin(half);
                    double drag2 = pinion * Math.sin(half) - along;
                    double torque = (arm2 + friction * drag2) / (arm1 + friction * drag1);
                    assertThat(touch.efficiency(friction)).isCloseTo(torque * wheel / pinion, within(1e-6));
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"60, 8", "72, 6", "96, 12"})
    void a_lantern_of_pins_without_thickness_keeps_its_ratio_in_recess_and_has_no_approach(
            int toothCount, int leafCount) {
        double addendum = LanternWheel.addendumFor(toothCount, leafCount, 0, 1.05);
        LanternWheel wheel = new LanternWheel(toothCount, leafCount, 0, addendum, 0.5, 0);
        MeshPair pair = new LanternPair(wheel, new LanternPinion(leafCount, 0)).mesh();
        ContactPath path = MeshTracer.trace(pair, MeshConditions.NOMINAL, Sampling.EXACT);
        for (ContactSample sample : path.withFriction(0.2).samples()) {
            for (Contact touch : sample.contacts()) {
                assertThat(touch.isApproach()).isFalse();
                assertThat(touch.speedRatio()).isCloseTo(pair.ratio(), within(1e-9 * pair.ratio()));
            }
        }
        // Before the line of centres the pin's lag grows with the cube of the angle, so the tie of 1e-9 rad
        // reaches a few ten-thousandths of a radian back.
        assertThat(path.approachAngle()).isCloseTo(0, within(5e-4));
    }

    @ParameterizedTest
    @CsvSource({"60, 8, 1.4", "72, 6, 1.2", "96, 12, 1.5", "80, 10, 0.8"})
    void a_lantern_of_real_pins_keeps_its_ratio_past_the_trimmed_swallowtail(
            int toothCount, int leafCount, double pin) {
        MeshPair pair = LanternPair.of(toothCount, leafCount, pin, 1.05, 0.1).mesh();
        ContactPath path = MeshTracer.trace(pair, MeshConditions.NOMINAL, Sampling.EXACT);
        assertThat(path.contactRatio()).isCloseTo(1.05, within(1e-8));
        assertThat(path.ripple()).isCloseTo(0, within(1e-9));
    }
}
