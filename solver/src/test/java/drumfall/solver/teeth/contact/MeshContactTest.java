// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.teeth.flank.ToothLimitException;
import drumfall.solver.teeth.form.BasicRack;
import drumfall.solver.teeth.form.CycloidalPair;
import drumfall.solver.teeth.form.InvolutePair;
import drumfall.solver.teeth.form.LeafTop;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.teeth.form.WheelTop;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class MeshContactTest {
    private static final BasicRack RACK = BasicRack.ISO_53_A;

    static Stream<SeededMeshes.Case> seededPairs() {
        return SeededMeshes.of(24, 200);
    }

    // Input torque 1 over the driver's pitch; friction work is mu N |v|, with the sliding speed taken from the motion
    // of
    // both flanks' points and N from the driver's torque. The quadrature is the path's own, good to 1e-8.
    @ParameterizedTest
    @MethodSource("seededPairs")
    void output_and_friction_make_up_the_input_over_a_pitch(SeededMeshes.Case c) {
        double friction = 0.15;
        MeshContact contact =
                MeshTracer.trace(c.pair(), c.conditions(), Sampling.EXACT).withFriction(friction);
        double output = contact.integral(t -> t.torqueRatio(friction) * t.speedRatio());
        double lost = contact.integral(t -> friction * normalForce(t, friction) * slidingSpeed(t));
        double pitch = contact.path().driverPitch();
        assertThat((output + lost) / pitch).isCloseTo(1, within(1e-6));
    }

    // The follower's turn over a pitch of the driver is one pitch of its own; good to the quadrature at kinks.
    @ParameterizedTest
    @MethodSource("seededPairs")
    void the_speed_ratio_adds_up_to_the_followers_pitch(SeededMeshes.Case c) {
        MeshContact contact =
                MeshTracer.trace(c.pair(), c.conditions(), Sampling.EXACT).withFriction(0);
        assertThat(contact.integral(Contact::speedRatio) / c.pair().follower().pitchAngle())
                .isCloseTo(1, within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("seededPairs")
    void more_friction_never_gives_more_torque(SeededMeshes.Case c) {
        ContactPath path = MeshTracer.trace(c.pair(), c.conditions(), Sampling.SWIFT);
        double last = Double.POSITIVE_INFINITY;
        for (double friction : new double[] {0, 0.05, 0.1, 0.2, 0.3, 0.5}) {
            MeshContact contact = path.withFriction(friction);
            assertThat(contact.worst()).isLessThanOrEqualTo(last);
            if (!contact.binds()) {
                for (int i = 0; i < contact.samples().size() && friction > 0; i++) {
                    double before =
                            path.withFriction(friction / 2).samples().get(i).torqueRatio();
                    assertThat(contact.samples().get(i).torqueRatio()).isLessThanOrEqualTo(before);
                }
            }
            last = contact.worst();
        }
    }

    @ParameterizedTest
    @MethodSource("seededPairs")
    void without_friction_nothing_is_lost(SeededMeshes.Case c) {
        MeshContact contact =
                MeshTracer.trace(c.pair(), c.conditions(), Sampling.SWIFT).withFriction(0);
        assertThat(contact.worst()).isCloseTo(1, within(1e-12));
        assertThat(contact.mean()).isCloseTo(1, within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("seededPairs")
    void the_mesh_binds_exactly_at_its_binding_friction(SeededMeshes.Case c) {
        ContactPath path = MeshTracer.trace(c.pair(), c.conditions(), Sampling.EXACT);
        double limit = path.bindingFriction();
        if (limit < 1) {
            assertThat(path.withFriction(limit * (1 - 1e-9)).worst()).isPositive();
            assertThat(path.withFriction(limit).worst()).isCloseTo(0, within(1e-9));
            assertThat(path.withFriction(limit).binds()).isTrue();
            assertThat(path.withFriction(limit - 0.01).bindingReserve()).isCloseTo(0.01, within(1e-12));
        }
    }

    // Thinning turns flanks and does nothing else: the curve is the same, the backlash grows by what was taken off.
    @ParameterizedTest
    @MethodSource("seededPairs")
    void thinning_changes_the_backlash_and_nothing_else(SeededMeshes.Case c) {
        MeshConditions thin = new MeshConditions(c.conditions().centreError(), 0.05, 0.07);
        ContactPath full = MeshTracer.trace(c.pair(), c.conditions(), Sampling.EXACT);
        ContactPath thinned = MeshTracer.trace(c.pair(), thin, Sampling.EXACT);
        assertThat(thinned.withFriction(0.2).worst())
                .isCloseTo(full.withFriction(0.2).worst(), within(1e-7));
        assertThat(thinned.withFriction(0.2).mean())
                .isCloseTo(full.withFriction(0.2).mean(), within(1e-7));
        double grown = thinned.clearances().leastBacklash() - full.clearances().leastBacklash();
        // Off conjugacy the ratio at the touching point is not quite the nominal one.
        assertThat(grown).isCloseTo(0.12, within(0.02));
    }

    @ParameterizedTest
    @EnumSource(LeafTop.class)
    void in_the_cycloidal_form_more_leaves_never_have_a_longer_approach(LeafTop top) {
        double last = Double.POSITIVE_INFINITY;
        for (int leaves = 6; leaves <= 16; leaves++) {
            MeshPair pair = CycloidalPair.of(new CycloidalPair.Proportions(
                            96, leaves, WheelTop.EPICYCLOID, top.addendum(6), 0.95, Math.PI / 2, Math.PI / 3, 0.1))
                    .wheelDriving();
            double approach = MeshTracer.trace(pair, MeshConditions.NOMINAL, Sampling.EXACT)
                    .followerApproachAngle();
            assertThat(approach).as("%s leaves", leaves).isLessThanOrEqualTo(last + 1e-9);
            last = approach;
        }
    }

    @ParameterizedTest
    @MethodSource("seededPairs")
    void the_swift_sampling_is_within_its_stated_accuracy_of_the_exact(SeededMeshes.Case c) {
        MeshContact swift =
                MeshTracer.trace(c.pair(), c.conditions(), Sampling.SWIFT).withFriction(0.2);
        MeshContact exact =
                MeshTracer.trace(c.pair(), c.conditions(), Sampling.EXACT).withFriction(0.2);
        assertThat(swift.worst()).isCloseTo(exact.worst(), within(1e-4));
        assertThat(swift.mean()).isCloseTo(exact.mean(), within(1e-4));
    }

    @ParameterizedTest
    @MethodSource("seededPairs")
    void the_exact_sampling_is_within_its_stated_accuracy_of_a_finer_one(SeededMeshes.Case c) {
        Sampling finer = new Sampling(128, 96, 21, 16, 8, 1e-12, true);
        MeshContact exact =
                MeshTracer.trace(c.pair(), c.conditions(), Sampling.EXACT).withFriction(0.2);
        MeshContact fine = MeshTracer.trace(c.pair(), c.conditions(), finer).withFriction(0.2);
        assertThat(exact.worst()).isCloseTo(fine.worst(), within(1e-7));
        assertThat(exact.mean()).isCloseTo(fine.mean(), within(1e-7));
    }

    @Test
    void gears_that_cannot_reach_each_other_are_refused() {
        MeshPair pair = InvolutePair.of(RACK, 20, 40, 0, 0).mesh();
        ToothLimitException refused = catchThrowableOfType(
                ToothLimitException.class, () -> MeshTracer.trace(pair, MeshConditions.centreOff(3), Sampling.SWIFT));
        assertThat(refused).hasMessageContaining("centreError of a mesh (3) must be at most 1.");
        assertThat(MeshTracer.trace(pair, MeshConditions.centreOff(refused.nearest()), Sampling.SWIFT)
                        .contactRatio())
                .isGreaterThanOrEqualTo(1 - 1e-9);
        MeshPair apart = new MeshPair(pair.driver(), pair.follower(), 40);
        assertThatThrownBy(() -> MeshTracer.trace(apart, MeshConditions.NOMINAL, Sampling.SWIFT))
                .hasMessageContaining("centreDistance (40.0)");
        assertThatThrownBy(() -> MeshTracer.trace(pair, MeshConditions.NOMINAL, Sampling.SWIFT)
                        .withFriction(15))
                .hasMessageContaining("percent");
    }

    @Test
    void the_cache_keeps_a_path_for_equal_gears_and_makes_room_for_new_ones() {
        PathCache cache = new PathCache(2);
        MeshPair pair = InvolutePair.of(RACK, 20, 40, 0, 0).mesh();
        ContactPath path = cache.path(pair, MeshConditions.NOMINAL, Sampling.SWIFT);
        assertThat(cache.path(InvolutePair.of(RACK, 20, 40, 0, 0).mesh(), MeshConditions.NOMINAL, Sampling.SWIFT))
                .isSameAs(path);
        cache.path(pair, MeshConditions.centreOff(0.1), Sampling.SWIFT);
        cache.path(pair, MeshConditions.centreOff(0.2), Sampling.SWIFT);
        assertThat(cache.size()).isEqualTo(2);
    }

    @Test
    void the_worst_of_a_band_is_not_better_than_the_nominal_case() {
        MeshPair pair = CycloidalPair.customary(60, 8).wheelDriving();
        ContactBand band = ContactBand.of(
                pair, new ContactBand.Errors(-0.1, 0.15, 0.05, 0.1), 0.2, Sampling.SWIFT, new PathCache(16));
        assertThat(band.worst().worst()).isLessThanOrEqualTo(band.nominal().worst());
        assertThat(band.corners()).hasSize(4);
        assertThat(band.leastBacklash())
                .isLessThan(band.nominal().path().clearances().leastBacklash());
    }

    /** Speeds of an involute pair keep their ratio, so its torque is least where its efficiency is; 1e-6 of a pitch apart. */
    @Test
    void the_torque_of_a_conjugate_pair_is_least_where_its_efficiency_is() {
        MeshContact mesh = MeshTracer.trace(
                        InvolutePair.of(RACK, 60, 8, -0.53, 0.53).mesh(), MeshConditions.NOMINAL, Sampling.EXACT)
                .withFriction(0.3);
        assertThat(mesh.worstTorqueAngle())
                .isCloseTo(mesh.worstAngle(), within(1e-6 * mesh.path().driverPitch()));
        assertThat(mesh.worstTorqueAngle()).isBetween(0.0, mesh.path().driverPitch());
    }

    private static double normalForce(Contact t, double friction) {
        double drag = t.sliding() < 0 ? -friction : friction;
        double tangentX = -t.normalY();
        double tangentY = t.normalX();
        double arm = t.x() * (t.normalY() + drag * tangentY) - t.y() * (t.normalX() + drag * tangentX);
        return 1 / arm;
    }

    /** The difference of the two points' velocities, from the motion alone. */
    private static double slidingSpeed(Contact t) {
        double ratio = t.speedRatio();
        double vx = -t.y() - ratio * t.y();
        double vy = t.x() - ratio * (t.centreDistance() - t.x());
        return Math.hypot(vx, vy);
    }
}
