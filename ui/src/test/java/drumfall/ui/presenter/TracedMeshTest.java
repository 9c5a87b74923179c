// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.teeth.flank.ToothLimitException;
import drumfall.solver.teeth.outline.Point;
import drumfall.solver.train.Mesh;
import drumfall.ui.presenter.TracedMesh.Jam;
import java.util.List;
import org.junit.jupiter.api.Test;

class TracedMeshTest {
    private static final Mesh MESH = MeshTrains.mesh(60, 8, "1.25");

    @Test
    void as_drawn_nothing_jams() {
        TracedMesh traced = MeshTrains.traced(MESH, 0, 75e-6);
        assertThat(traced.jam()).isEmpty();
        assertThat(traced.overlap()).isZero();
        // Both gears are thinned by 75 micrometres; chosen shifts cancel, so the pair meshes tightly before that.
        assertThat(traced.backlash()).isCloseTo(150e-6, within(1e-7));
    }

    @Test
    void centres_too_close_jam_the_trailing_flanks_by_what_the_backlash_lacks() {
        TracedMesh traced = MeshTrains.traced(MESH, -0.4e-3, 75e-6);
        assertThat(traced.jam()).contains(Jam.TRAILING);
        assertThat(traced.overlap()).isCloseTo(-1e3 * traced.backlash(), within(1e-9));
        assertThat(traced.overlap()).isPositive();
    }

    @Test
    void thinned_teeth_moved_closer_still_meet_a_root_or_a_top() {
        TracedMesh traced = MeshTrains.traced(MESH, -0.6e-3, 0.6e-3);
        assertThat(traced.jam()).isPresent().get().isNotEqualTo(Jam.TRAILING);
    }

    @Test
    void centres_too_far_apart_are_refused_with_the_farthest_that_works() {
        assertThatThrownBy(() -> MeshTrains.traced(MESH, 5e-3, 75e-6))
                .isInstanceOfSatisfying(ToothLimitException.class, refused -> {
                    assertThat(refused.subject()).startsWith("centreError");
                    assertThat(MeshTrains.traced(MESH, refused.nearest() * 1.25e-3, 75e-6)
                                    .path()
                                    .contactRatio())
                            .isGreaterThanOrEqualTo(1);
                });
    }

    @Test
    void a_drawn_tooth_spans_one_pitch_from_root_to_tip() {
        TracedMesh traced = MeshTrains.traced(MESH, 0, 75e-6);
        List<Point> leaf = traced.leaf();
        double tip = leaf.stream().mapToDouble(TracedMeshTest::radius).max().orElseThrow();
        assertThat(tip).isCloseTo(traced.teeth().pinion().tipRadius(), within(2e-3));
        assertThat(leaf.stream().mapToDouble(point -> Math.atan2(point.y(), point.x())))
                .allSatisfy(angle -> assertThat(angle).isBetween(-Math.PI / 8, 2 * Math.PI / 8));
    }

    private static double radius(Point point) {
        return Math.hypot(point.x(), point.y());
    }
}
