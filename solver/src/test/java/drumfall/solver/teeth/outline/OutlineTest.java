// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.teeth.flank.FlankPiece;
import drumfall.solver.teeth.flank.FlankPoint;
import drumfall.solver.teeth.flank.ToothLimitException;
import drumfall.solver.teeth.form.BasicRack;
import drumfall.solver.teeth.form.CycloidalPair;
import drumfall.solver.teeth.form.InvoluteGear;
import drumfall.solver.teeth.form.LanternPair;
import drumfall.solver.teeth.form.LeafTop;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.teeth.form.WheelTop;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class OutlineTest {
    private static final double MODULE = 1.5;
    private static final double TOLERANCE = 1e-3;
    private static final GeometryFactory PLANE = new GeometryFactory();

    static Stream<ToothForm> everyForm() {
        return Stream.of(
                InvoluteGear.of(BasicRack.ISO_53_A, 60, -0.53),
                new InvoluteGear(BasicRack.ISO_53_A, 8, 0, 4.8),
                InvoluteGear.of(BasicRack.ISO_53_A, 8, 0.5),
                CycloidalPair.customary(60, 8).wheel(),
                CycloidalPair.of(72, 6, WheelTop.SINGLE_ARC, LeafTop.OGIVE).wheel(),
                CycloidalPair.customary(60, 8).pinion(),
                CycloidalPair.of(60, 12, WheelTop.EPICYCLOID, LeafTop.ROUND).pinion(),
                LanternPair.of(60, 8, 1.2, 1.05, 0.1).wheel());
    }

    static Polygon polygon(Ring ring, double chordError) {
        List<Point> points = ring.polygon(chordError);
        Coordinate[] corners = new Coordinate[points.size() + 1];
        for (int i = 0; i < points.size(); i++) {
            corners[i] = new Coordinate(points.get(i).x(), points.get(i).y());
        }
        corners[points.size()] = corners[0];
        return PLANE.createPolygon(corners);
    }

    @ParameterizedTest
    @MethodSource("everyForm")
    void the_toothed_ring_is_closed_and_does_not_cross_itself(ToothForm form) {
        for (double thinning : new double[] {0, 0.1, 0.25}) {
            Ring ring = ToothRing.of(form, MODULE, thinning, TOLERANCE);
            assertThat(polygon(ring, 1e-4).isValid()).isTrue();
            assertThat(ring.moments().area()).isPositive();
        }
    }

    // The tolerance in force plus the fine polygon's own 1e-5 mm.
    @ParameterizedTest
    @MethodSource("everyForm")
    void the_arcs_stay_within_the_stated_distance_of_the_flank(ToothForm form) {
        var boundary = polygon(ToothRing.of(form, MODULE, 0, TOLERANCE), 1e-5).getBoundary();
        for (FlankPiece piece : form.flank().pieces()) {
            for (double share = 0; share <= 1; share += 0.03125) {
                FlankPoint p = piece.at(share);
                Point point = Point.polar(p.radius() * MODULE, p.halfAngle() + 3 * form.pitchAngle());
                assertThat(boundary.distance(PLANE.createPoint(new Coordinate(point.x(), point.y()))))
                        .isLessThan(TOLERANCE + 1e-5);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("everyForm")
    void the_teeth_are_counted_and_placed_exactly(ToothForm form) {
        Ring ring = ToothRing.of(form, MODULE, 0.1, TOLERANCE);
        int perTooth = ring.segments().size() / form.toothCount();
        assertThat(ring.segments()).hasSize(perTooth * form.toothCount());
        for (int i = 0; i < form.toothCount(); i++) {
            Point first = ring.segments().get(0).start().turned(i * form.pitchAngle());
            // Turning by a multiple of the pitch is exact to rounding.
            assertThat(ring.segments().get(i * perTooth).start().distance(first))
                    .isLessThan(1e-12);
        }
    }

    // The polygon's area is short by at most its length times the chord error of 1e-5 mm.
    @ParameterizedTest
    @MethodSource("everyForm")
    void area_and_polar_moment_are_those_of_a_fine_polygon(ToothForm form) {
        Ring ring = ToothRing.of(form, MODULE, 0.1, TOLERANCE);
        Polygon polygon = polygon(ring, 1e-5);
        double slack = polygon.getLength() * 1e-5;
        assertThat(ring.moments().area()).isCloseTo(polygon.getArea(), within(slack));
        double tip = form.flank().tipRadius() * MODULE;
        assertThat(ring.moments().polar()).isCloseTo(polar(polygon), within(slack * tip * tip));
        assertThat(ring.moments().x()).isCloseTo(0, within(1e-6 * ring.moments().area()));
    }

    private static double polar(Polygon polygon) {
        Coordinate[] c = polygon.getExteriorRing().getCoordinates();
        double sum = 0;
        for (int i = 1; i < c.length; i++) {
            double cross = c[i - 1].x * c[i].y - c[i].x * c[i - 1].y;
            sum += cross * (c[i - 1].x * c[i - 1].x + c[i - 1].x * c[i].x + c[i].x * c[i].x);
            sum += cross * (c[i - 1].y * c[i - 1].y + c[i - 1].y * c[i].y + c[i].y * c[i].y);
        }
        return sum / 12;
    }

    @ParameterizedTest
    @MethodSource("everyForm")
    void a_larger_module_scales_the_outline_and_nothing_else(ToothForm form) {
        Moments one = ToothRing.of(form, 1, 0.1, TOLERANCE).moments();
        Moments two = ToothRing.of(form, 2, 0.2, 2 * TOLERANCE).moments();
        assertThat(two.area()).isCloseTo(4 * one.area(), within(1e-9 * two.area()));
        assertThat(two.polar()).isCloseTo(16 * one.polar(), within(1e-9 * two.polar()));
    }

    // pi R^2 and pi R^4 / 2; off centre by the parallel-axis theorem.
    @Test
    void a_circles_moments_are_the_textbooks() {
        Moments centred = Ring.circle(new Point(0, 0), 3).moments();
        assertThat(centred.area()).isCloseTo(9 * Math.PI, within(1e-12));
        assertThat(centred.polar()).isCloseTo(81 * Math.PI / 2, within(1e-11));
        Moments off = Ring.circle(new Point(4, -2), 3).moments();
        assertThat(off.x() / off.area()).isCloseTo(4, within(1e-12));
        assertThat(off.y() / off.area()).isCloseTo(-2, within(1e-12));
        assertThat(off.polar()).isCloseTo(81 * Math.PI / 2 + 9 * Math.PI * 20, within(1e-9));
    }

    // The bulge is the tangent of a quarter of the arc's turn.
    @Test
    void a_half_circle_has_bulge_one_and_a_line_none() {
        assertThat(Ring.circle(new Point(0, 0), 3).segments().get(0).bulge()).isCloseTo(1, within(1e-12));
        assertThat(ArcSegment.about(3, 1, 0).bulge()).isNegative();
        assertThat(new LineSegment(new Point(0, 0), new Point(1, 0)).bulge()).isZero();
    }

    @Test
    void a_wheel_has_a_bore_and_as_many_windows_as_arms() {
        WheelBody body = new WheelBody(3.2, 1.2, 14, 4, 5, 5, 1.5);
        Outline wheel = GearOutline.of(
                CycloidalPair.customary(60, 8).wheel(), body, new GearOutline.Drawing(MODULE, 0.15, TOLERANCE));
        assertThat(wheel.holes()).hasSize(6);
        Polygon outer = polygon(wheel.outer(), 1e-4);
        for (Ring hole : wheel.holes()) {
            assertThat(polygon(hole, 1e-4).isValid()).isTrue();
            assertThat(outer.contains(polygon(hole, 1e-4))).isTrue();
        }
        assertThat(polygon(wheel.holes().get(1), 1e-4)
                        .disjoint(polygon(wheel.holes().get(2), 1e-4)))
                .isTrue();
        double arm = polygon(wheel.holes().get(1), 1e-4)
                .distance(polygon(wheel.holes().get(2), 1e-4));
        assertThat(arm).isCloseTo(5, within(1e-3));
    }

    @Test
    void a_windows_corners_join_without_an_edge() {
        Outline wheel = GearOutline.of(
                CycloidalPair.customary(60, 8).wheel(),
                new WheelBody(3.2, 1.2, 14, 4, 5, 5, 1.5),
                new GearOutline.Drawing(MODULE, 0, TOLERANCE));
        List<OutlineSegment> window = wheel.holes().get(1).segments();
        for (int i = 0; i < window.size(); i++) {
            double out = heading(window.get(i).reversed()) + Math.PI;
            double in = heading(window.get((i + 1) % window.size()));
            assertThat(Math.cos(out - in)).isCloseTo(1, within(1e-9));
        }
    }

    private static double heading(OutlineSegment segment) {
        double chord = Math.atan2(
                segment.end().y() - segment.start().y(),
                segment.end().x() - segment.start().x());
        return chord - 2 * Math.atan(segment.bulge());
    }

    @Test
    void a_bore_that_reaches_the_root_is_refused_and_the_named_one_works() {
        ToothForm pinion = CycloidalPair.customary(60, 8).pinion();
        GearOutline.Drawing drawing = new GearOutline.Drawing(MODULE, 0.1, TOLERANCE);
        ToothLimitException refused = catchThrowableOfType(
                ToothLimitException.class, () -> GearOutline.of(pinion, WheelBody.solid(6, 0.8), drawing));
        assertThat(refused).hasMessageContaining("bore of a gear of 8 (6) must be at most");
        assertThat(GearOutline.of(pinion, WheelBody.solid(refused.nearest(), 0.8), drawing)
                        .holes())
                .hasSize(1);
    }

    @Test
    void arms_too_wide_for_the_hub_are_refused_and_the_named_hub_works() {
        ToothForm wheel = CycloidalPair.customary(60, 8).wheel();
        GearOutline.Drawing drawing = new GearOutline.Drawing(MODULE, 0.1, TOLERANCE);
        WheelBody narrow = new WheelBody(3.2, 1, 6, 4, 6, 8, 1);
        ToothLimitException refused =
                catchThrowableOfType(ToothLimitException.class, () -> GearOutline.of(wheel, narrow, drawing));
        WheelBody wide = new WheelBody(3.2, 1, refused.nearest(), 4, 6, 8, 1);
        assertThat(GearOutline.of(wheel, wide, drawing).holes()).hasSize(7);
    }

    @Test
    void a_rim_wider_than_its_wheel_is_refused_and_the_named_rim_works() {
        ToothForm wheel = CycloidalPair.customary(60, 8).wheel();
        GearOutline.Drawing drawing = new GearOutline.Drawing(MODULE, 0.1, TOLERANCE);
        ToothLimitException refused = catchThrowableOfType(
                ToothLimitException.class,
                () -> GearOutline.of(wheel, new WheelBody(3.2, 1, 20, 60, 5, 5, 1), drawing));
        WheelBody body = new WheelBody(3.2, 1, 20, refused.nearest() * 0.999, 5, 5, 1);
        assertThat(GearOutline.of(wheel, body, drawing).holes()).hasSize(6);
    }

    @Test
    void thinning_that_leaves_no_tooth_or_no_space_is_refused() {
        ToothForm wheel = CycloidalPair.customary(60, 8).wheel();
        assertThatThrownBy(() -> ToothRing.of(wheel, 1, 2, TOLERANCE)).hasMessageContaining("thinning of a gear of 60");
        assertThatThrownBy(() -> ToothRing.of(wheel, 1, -2, TOLERANCE)).hasMessageContaining("must be at least");
    }

    @Test
    void the_first_layer_is_drawn_in_all_round() {
        ToothForm form = CycloidalPair.customary(60, 8).wheel();
        WheelBody body = new WheelBody(3.2, 1, 14, 4, 5, 5, 1.5);
        GearOutline.Drawing drawing = new GearOutline.Drawing(MODULE, 0.1, TOLERANCE);
        Outline usual = GearOutline.of(form, body, drawing);
        Outline first = GearOutline.firstLayer(form, body, drawing, 0.1);
        assertThat(polygon(usual.outer(), 1e-4).buffer(1e-3).contains(polygon(first.outer(), 1e-4)))
                .isTrue();
        for (int i = 0; i < usual.holes().size(); i++) {
            assertThat(polygon(first.holes().get(i), 1e-4)
                            .buffer(1e-3)
                            .contains(polygon(usual.holes().get(i), 1e-4)))
                    .isTrue();
        }
    }

    @Test
    void a_lantern_shroud_has_a_hole_for_each_pin() {
        LanternPair pair = LanternPair.of(60, 8, 1.2, 1.05, 0.1);
        Outline shroud = GearOutline.shroud(pair.pinion(), WheelBody.solid(3.2, 1), MODULE, 0.1);
        assertThat(shroud.holes()).hasSize(9);
        assertThatThrownBy(() -> GearOutline.shroud(pair.pinion(), WheelBody.solid(9, 1), MODULE, 0.1))
                .hasMessageContaining("bore of a lantern pinion of 8");
        assertThatThrownBy(() -> ToothRing.of(pair.pinion(), 1, 0, TOLERANCE)).hasMessageContaining("shroud");
    }

    // A ring of outer radius 20 mm, bore 4 mm, height 5 mm, 1250 kg/m^3: m = pi (R^2 - r^2) h rho, J = m (R^2 + r^2)/2.
    @Test
    void mass_and_inertia_of_a_ring_are_the_textbooks() {
        Outline ring = new Outline(
                Ring.circle(new Point(0, 0), 20),
                List.of(Ring.circle(new Point(0, 0), 2).reversed()));
        PrintedPart part = new PrintedPart(List.of(new PrintedPart.Layer(ring, 5, 1250)));
        double mass = Math.PI * (400 - 4) * 5 * 1250e-9;
        assertThat(part.mass()).isCloseTo(mass, within(1e-15));
        assertThat(part.inertia()).isCloseTo(mass * 404e-6 / 2, within(1e-18));
        assertThat(part.gyration()).isCloseTo(Math.sqrt(202e-6), within(1e-12));
    }

    @Test
    void wheel_and_pinion_on_one_arbor_are_one_part() {
        GearOutline.Drawing drawing = new GearOutline.Drawing(MODULE, 0.1, TOLERANCE);
        PrintedPart.Layer wheel = new PrintedPart.Layer(
                GearOutline.of(CycloidalPair.customary(60, 8).wheel(), new WheelBody(3.2, 1, 20, 4, 5, 5, 1), drawing),
                5,
                1250);
        PrintedPart.Layer pinion = new PrintedPart.Layer(
                GearOutline.of(CycloidalPair.customary(64, 8).pinion(), WheelBody.solid(3.2, 0.8), drawing), 8, 1250);
        PrintedPart part = new PrintedPart(List.of(wheel, pinion));
        assertThat(part.mass()).isCloseTo(wheel.mass() + pinion.mass(), within(1e-15));
        assertThat(part.height()).isEqualTo(13);
        assertThat(part.gyration()).isLessThan(new PrintedPart(List.of(wheel)).gyration());
    }

    @Test
    void rings_that_do_not_close_and_holes_run_the_wrong_way_are_refused() {
        LineSegment line = new LineSegment(new Point(0, 0), new Point(1, 0));
        assertThatThrownBy(() -> new Ring(List.of(line))).hasMessageContaining("gap");
        Ring circle = Ring.circle(new Point(0, 0), 1);
        assertThatThrownBy(() -> new Outline(circle, List.of(circle))).hasMessageContaining("reverse");
        assertThatThrownBy(() -> new PrintedPart(List.of())).hasMessageContaining("layers");
    }
}
