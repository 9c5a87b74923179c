// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.train.Train;
import drumfall.ui.view.train.DrawingPlan.Disc;
import drumfall.ui.view.train.DrawingPlan.Part;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DrawingPlanTest {
    private static final TabularText TEXT = new TabularText(new Font(Font.SANS_SERIF, Font.PLAIN, 13));

    /** Pixels; sums of a few doubles of the order of a thousand. */
    private static final double EXACT = 1e-9;

    private static DrawingPlan plan(Train train, int width, int height, DrawingView view) {
        return new DrawingPlanner(
                        train,
                        SampleTrains.brief(),
                        view,
                        new Figures(UnitSystem.METRIC),
                        new Dimension(width, height),
                        1,
                        TEXT)
                .plan(Optional.empty(), Optional.of(1));
    }

    static Stream<DrawingPlan> plans() {
        return IntStream.rangeClosed(2, 8)
                .boxed()
                .flatMap(meshes -> Stream.of(new Dimension(1100, 480), new Dimension(700, 480), new Dimension(520, 520))
                        .map(size -> plan(SampleTrains.of(meshes), size.width, size.height, DrawingView.FITTED)));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void pitch_circles_of_a_mesh_touch(DrawingPlan plan) {
        for (int i = 0; i + 1 < plan.arbors().size(); i++) {
            double distance = plan.arbors().get(i).distance(plan.arbors().get(i + 1));
            double radii = disc(plan, Part.WHEEL, i).inner()
                    + disc(plan, Part.PINION, i + 1).inner();
            assertThat(distance).isCloseTo(radii, within(EXACT));
        }
    }

    private static Disc disc(DrawingPlan plan, Part part, int arbor) {
        return plan.discs().stream()
                .filter(disc -> disc.part() == part && disc.arbor() == arbor)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("plans")
    void arbors_are_numbered_from_the_drum(DrawingPlan plan) {
        List<DrawingPlan.Balloon> balloons = plan.balloons();
        assertThat(balloons).hasSameSizeAs(plan.arbors());
        for (int i = 0; i < balloons.size(); i++) {
            assertThat(balloons.get(i).arbor()).isEqualTo(i);
            assertThat(balloons.get(i).foot()).isEqualTo(plan.arbors().get(i));
        }
        assertThat(plan.arbors()).isSortedAccordingTo((a, b) -> Double.compare(a.getX(), b.getX()));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void a_fitted_drawing_keeps_all_tips_in_its_room(DrawingPlan plan) {
        double left = plan.discs().stream()
                .mapToDouble(disc -> disc.centre().getX() - disc.outer())
                .min()
                .orElseThrow();
        double top = plan.discs().stream()
                .mapToDouble(disc -> disc.centre().getY() - disc.outer())
                .min()
                .orElseThrow();
        assertThat(left).isPositive();
        assertThat(top).isGreaterThan(40);
        assertThat(plan.balloons())
                .allSatisfy(balloon -> assertThat(balloon.centre().getY()).isGreaterThan(balloon.radius()));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void distances_do_not_overlap(DrawingPlan plan) {
        List<Rectangle2D> boxes =
                plan.distances().stream().map(DrawingPlan.Distance::box).toList();
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = i + 1; j < boxes.size(); j++) {
                assertThat(boxes.get(i).intersects(boxes.get(j)))
                        .as("%d and %d", i, j)
                        .isFalse();
            }
        }
    }

    @Test
    void a_row_that_is_too_long_is_folded() {
        TrainFaces faces = TrainFaces.of(SampleTrains.of(8), SampleTrains.brief());
        assertThat(ArborRow.fitting(faces, 10).straight()).isTrue();
        assertThat(ArborRow.fitting(faces, 1.2).straight()).isFalse();
    }

    @Test
    void the_smallest_part_under_the_pointer_gives_the_arbor() {
        DrawingPlan plan = plan(SampleTrains.of(4), 1100, 480, DrawingView.FITTED);
        Point2D second = plan.arbors().get(1);
        assertThat(plan.arborAt(second.getX(), second.getY())).contains(1);
        assertThat(plan.arborAt(1, 1)).isEmpty();
    }

    @Test
    void a_mesh_is_taken_where_its_pitch_circles_touch() {
        DrawingPlan plan = plan(SampleTrains.of(4), 1100, 480, DrawingView.FITTED);
        for (int mesh = 0; mesh < 4; mesh++) {
            Point2D point = plan.pitchPoint(mesh);
            assertThat(plan.arbors().get(mesh + 1).distance(point))
                    .isCloseTo(disc(plan, Part.PINION, mesh + 1).inner(), within(EXACT));
            assertThat(plan.meshAt(point.getX() + 1, point.getY(), 5)).contains(mesh);
        }
        assertThat(plan.meshAt(1, 1, 5)).isEmpty();
    }

    @Test
    void the_scale_bar_is_as_long_as_it_says() {
        DrawingPlan plan = plan(SampleTrains.of(4), 1100, 480, DrawingView.FITTED);
        double millimetres = Double.parseDouble(plan.bar().text().number());
        assertThat(plan.bar().text().unit()).isEqualTo("mm");
        assertThat(plan.bar().box().getWidth()).isCloseTo(millimetres / 1000 * plan.scale(), within(EXACT));
    }

    @Test
    void zooming_keeps_the_point_under_the_pointer() {
        Train train = SampleTrains.of(4);
        Dimension size = new Dimension(1100, 480);
        DrawingPlan before = plan(train, size.width, size.height, DrawingView.FITTED);
        Point2D arbor = before.arbors().get(2);
        Point2D middle = DrawingPlanner.middle(size, 1);
        Point2D point = new Point2D.Double(arbor.getX() - middle.getX(), arbor.getY() - middle.getY());
        DrawingPlan after = plan(train, size.width, size.height, DrawingView.FITTED.zoomed(3, point));
        assertThat(after.arbors().get(2).distance(arbor)).isLessThan(EXACT);
        assertThat(after.scale()).isCloseTo(3 * before.scale(), within(EXACT * before.scale()));
    }

    @Test
    void zoom_ends_at_its_limits() {
        DrawingView close = DrawingView.FITTED.zoomed(1e6, new Point2D.Double());
        assertThat(close.zoom()).isEqualTo(40);
        assertThat(close.zoomed(1e-9, new Point2D.Double()).zoom()).isEqualTo(0.25);
    }
}
