// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.teeth.contact.Contact;
import drumfall.solver.teeth.contact.ContactSample;
import drumfall.solver.teeth.contact.MeshContact;
import drumfall.ui.presenter.MeshPhases.Phase;
import drumfall.ui.presenter.MeshPhases.Point;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MeshPhasesTest {
    private static final double FRICTION = 0.25;

    /** Straight lines through traced contacts of an involute pair, which lie on one; swift tracing is good to 1e-6 modules. */
    private static final double STRAIGHT = 1e-6;

    private static MeshPhases phases(double friction) {
        return new MeshPhases(MeshTrains.traced(MeshTrains.mesh(60, 8, "1.25"), 0, 75e-6)
                .path()
                .withFriction(friction));
    }

    @Test
    void at_the_phases_that_were_traced_it_is_as_traced() {
        MeshPhases phases = phases(FRICTION);
        MeshContact mesh = phases.mesh();
        double pitch = mesh.path().driverPitch();
        for (ContactSample sample : mesh.samples()) {
            Phase phase = phases.at(sample.driverAngle() / pitch);
            assertThat(phase.contacts()).hasSameSizeAs(sample.contacts());
            assertThat(phase.pinionAngle()).isCloseTo(sample.followerAngle(), within(1e-9));
            assertThat(phase.torqueShare())
                    .isCloseTo(sample.torqueRatio() * mesh.path().pair().ratio(), within(1e-9));
        }
    }

    // ISO 21771 (from memory): the contact of involute flanks runs along the common tangent of the base circles, which
    // leans
    // by the working pressure angle and passes the pitch point.
    @ParameterizedTest
    @ValueSource(doubles = {0.0, 0.013, 0.21, 0.377, 0.5, 0.731, 0.9999})
    void between_them_involute_contact_stays_on_the_tangent_of_the_base_circles(double share) {
        Phase phase = phases(0).at(share);
        for (Contact contact : phase.contacts()) {
            double pitchPoint = 30;
            double off = (contact.x() - pitchPoint) * contact.normalY() - contact.y() * contact.normalX();
            assertThat(off).isCloseTo(0, within(STRAIGHT));
            assertThat(contact.speedRatio()).isCloseTo(7.5, within(1e-5));
            assertThat(Math.hypot(contact.normalX(), contact.normalY())).isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void over_a_pitch_the_pinion_turns_by_its_pitch_and_starts_again() {
        MeshPhases phases = phases(FRICTION);
        double start = phases.at(0).pinionAngle();
        // The ratio of counts times the rest of the pitch left out.
        double rest = 1e-9;
        assertThat(phases.at(1 - rest).pinionAngle() - start).isCloseTo(2 * Math.PI / 8, within(1e-6));
        assertThat(phases.at(1).pinionAngle()).isCloseTo(start, within(1e-12));
        assertThat(phases.at(-3).wheelAngle()).isCloseTo(phases.at(0).wheelAngle(), within(1e-12));
    }

    @Test
    void without_friction_the_whole_torque_passes_at_every_phase() {
        assertThat(phases(0).curve())
                .allSatisfy(stretch -> assertThat(stretch.points())
                        .allSatisfy(point -> assertThat(point.torqueShare()).isCloseTo(1, within(1e-6))));
    }

    @Test
    void the_curve_covers_the_pitch_without_gaps_and_touches_its_worst() {
        MeshPhases phases = phases(FRICTION);
        List<MeshPhases.Stretch> curve = phases.curve();
        double from = 0;
        for (MeshPhases.Stretch stretch : curve) {
            assertThat(stretch.from()).isEqualTo(from);
            from = stretch.to();
        }
        assertThat(from).isEqualTo(1);
        double least = curve.stream()
                .flatMap(stretch -> stretch.points().stream())
                .mapToDouble(Point::least)
                .min()
                .orElseThrow();
        // The curve is drawn through 128 phases; the worst is searched for, up to half a step away.
        assertThat(least).isCloseTo(phases.mesh().worstTorque(), within(2e-3));
        assertThat(phases.worstPhase()).isBetween(0.0, 1.0);
    }

    @Test
    void a_stretch_of_approach_comes_before_one_of_recess() {
        List<MeshPhases.Stretch> curve = phases(FRICTION).curve();
        assertThat(curve.get(0).approach()).isTrue();
        assertThat(curve.get(curve.size() - 1).approach()).isFalse();
    }
}
