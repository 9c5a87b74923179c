// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Dimension;
import java.awt.geom.Point2D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MeshPlanTest {
    /** Pixels and radians; sums of a few doubles of the order of a thousand. */
    private static final double EXACT = 1e-9;

    private static MeshPlan plan(boolean clockwise) {
        return new MeshPlan(1, new Point2D.Double(), 30, 4, 34.1, clockwise).fitted(new Dimension(320, 240), 1);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void the_pitch_point_of_the_wheel_stands_in_the_middle(boolean clockwise) {
        Point2D point = plan(clockwise).onSheet(30, 0);
        assertThat(point.getX()).isCloseTo(160, within(EXACT));
        assertThat(point.getY()).isCloseTo(120, within(EXACT));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void teeth_at_the_mesh_go_down_if_the_wheel_turns_clockwise(boolean clockwise) {
        MeshPlan plan = plan(clockwise);
        double moved = plan.onSheet(30, 1).getY() - plan.onSheet(30, 0).getY();
        assertThat(moved).isCloseTo((clockwise ? 1 : -1) * plan.scale(), within(EXACT));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_dragged_tooth_follows_the_pointer(boolean clockwise) {
        MeshPlan plan = plan(clockwise);
        Point2D from = plan.onSheet(29 * Math.cos(0.01), 29 * Math.sin(0.01));
        Point2D to = plan.onSheet(29 * Math.cos(0.03), 29 * Math.sin(0.03));
        assertThat(plan.dragged(from, to)).isCloseTo(0.02, within(EXACT));
        assertThat(plan.dragged(to, from)).isCloseTo(-0.02, within(EXACT));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_dragged_leaf_turns_the_wheel_by_the_ratio_of_the_counts(boolean clockwise) {
        MeshPlan plan = plan(clockwise);
        Point2D from = plan.onSheet(34.1 - 3.5 * Math.cos(0.1), 3.5 * Math.sin(0.1));
        Point2D to = plan.onSheet(34.1 - 3.5 * Math.cos(0.4), 3.5 * Math.sin(0.4));
        assertThat(plan.dragged(from, to)).isCloseTo(0.3 * 4 / 30, within(EXACT));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 6})
    void looking_closer_keeps_the_pitch_point(double zoom) {
        MeshPlan plan = new MeshPlan(1, new Point2D.Double(), 30, 4, 34, true).fitted(new Dimension(320, 240), zoom);
        assertThat(plan.onSheet(30, 0).distance(160, 120)).isLessThan(EXACT);
    }
}
