// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.placed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.layout.Box;
import drumfall.solver.layout.Disc;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.Part;
import drumfall.solver.layout.PartKind;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.Span;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.PlacedFront.Piece;
import drumfall.ui.presenter.PlacedState.Seen;
import drumfall.ui.presenter.PlacedTrains;
import drumfall.ui.view.placed.ElevationPlan.Line;
import drumfall.ui.view.placed.ElevationPlan.Ring;
import drumfall.ui.view.train.DrawingView;
import java.awt.Dimension;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlacedPlanTest {
    /** Millimetres and pixels; sums of a few doubles of the order of a thousand. */
    private static final double EXACT = 1e-9;

    private static final Seen SEEN = PlacedTrains.seen();
    private static final Layout LAYOUT = SEEN.layout();
    private static final ElevationPlan PLAN = ElevationPlan.of(SEEN);
    private static final Seen WEEKLY = PlacedTrains.seen(BundledBriefs.demo(), PlacedTrains.weekly());
    private static final SectionPlan SECTION = SectionPlan.of(SEEN);

    @Test
    void every_arbor_stands_where_the_layout_says() {
        assertThat(PLAN.arbors()).hasSize(LAYOUT.places().size());
        for (int arbor = 0; arbor < LAYOUT.places().size(); arbor++) {
            assertThat(PLAN.arbors().get(arbor).getX())
                    .isCloseTo(LAYOUT.place(arbor).x() / 1e6, within(EXACT));
            assertThat(PLAN.arbors().get(arbor).getY())
                    .isCloseTo(LAYOUT.place(arbor).y() / 1e6, within(EXACT));
        }
    }

    @Test
    void every_part_and_pillar_has_its_outline() {
        for (Disc disc : LAYOUT.discs()) {
            Ring ring = PLAN.outline(disc.part()).orElseThrow();
            assertThat(ring.radius()).isCloseTo(disc.radius() / 1e6, within(EXACT));
        }
        for (int corner = 0; corner < 4; corner++) {
            assertThat(PLAN.outline(new Part(PartKind.PILLAR, corner))).isPresent();
        }
    }

    /** Modules of 1.5, 1.25, 1 and 1 mm: d = m z, the centre distances being m (z + p) / 2. */
    @ParameterizedTest
    @CsvSource({"0, 54, 7.5", "1, 37.5, 6.25", "2, 32, 5", "3, 30, 4"})
    void pitch_circles_touch_on_the_line_of_centres(int mesh, double wheel, double pinion) {
        List<Ring> pitch =
                PLAN.rings().stream().filter(ring -> ring.line() == Line.PITCH).toList();
        Ring driving = pitch.get(2 * mesh);
        Ring driven = pitch.get(2 * mesh + 1);
        assertThat(driving.radius()).isCloseTo(wheel, within(EXACT));
        assertThat(driven.radius()).isCloseTo(pinion, within(EXACT));
        // places are whole nanometres
        assertThat(Math.hypot(driving.x() - driven.x(), driving.y() - driven.y()))
                .isCloseTo(wheel + pinion, within(2e-6));
    }

    @Test
    void the_line_falls_from_the_drum_to_the_middle_of_the_weight() {
        double fall = PLAN.falls().get(0);
        assertThat(Math.abs(fall - PLAN.arbors().get(0).getX())).isCloseTo(26, within(EXACT));
        assertThat(PLAN.weight().getCenterX()).isCloseTo(fall, within(EXACT));
        assertThat(PLAN.fallTop() - PLAN.weight().getMaxY()).isCloseTo(90, within(EXACT));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 1, 7.5})
    void scale_and_place_are_each_others_inverse(double zoom) {
        DrawingView view = DrawingView.FITTED.zoomed(zoom, new Point2D.Double(30, -20));
        SheetScale scale = SheetScale.fitted(PLAN.bounds(), new Dimension(640, 480), 30, view);
        Place place = new Place(12_345_678, -9_876_543);
        Place back = scale.placeAt(new Point2D.Double(scale.x(12.345678), scale.y(-9.876543)));
        assertThat(back).isEqualTo(place);
    }

    @Test
    void a_fitted_sheet_holds_everything_and_touches_its_margins() {
        SheetScale scale = SheetScale.fitted(PLAN.bounds(), new Dimension(900, 480), 30, DrawingView.FITTED);
        Rectangle2D all = PLAN.bounds();
        assertThat(scale.y(all.getMaxY())).isCloseTo(30, within(EXACT));
        assertThat(scale.y(all.getMinY())).isCloseTo(450, within(EXACT));
        assertThat(scale.x(all.getMinX())).isGreaterThan(30);
        assertThat(scale.x(all.getMaxX())).isLessThan(870);
    }

    @Test
    void the_smallest_part_under_the_pointer_is_meant() {
        for (int arbor = 0; arbor < PLAN.arbors().size(); arbor++) {
            Point2D at = PLAN.arbors().get(arbor);
            assertThat(PLAN.arborAt(at.getX(), at.getY(), 0.5)).contains(arbor);
        }
        assertThat(PLAN.arborAt(PLAN.frame().getMinX() + 30, PLAN.frame().getMaxY() - 1, 0.5))
                .isEmpty();
    }

    @Test
    void the_section_keeps_planes_thicknesses_and_centre_distances() {
        for (int mesh = 0; mesh < 4; mesh++) {
            Span plane = LAYOUT.planes().ofWheel(mesh);
            Rectangle2D wheel =
                    SECTION.block(PartKind.WHEEL, mesh).orElseThrow().box();
            assertThat(wheel.getMinY()).isCloseTo(plane.from() / 1e6, within(EXACT));
            assertThat(wheel.getHeight()).isCloseTo(plane.length() / 1e6, within(EXACT));
            assertThat(wheel.getCenterX()).isCloseTo(SECTION.arbors().get(mesh), within(EXACT));
            assertThat(SECTION.arbors().get(mesh + 1) - SECTION.arbors().get(mesh))
                    .isCloseTo(LAYOUT.need().centreDistance(mesh) / 1e6, within(EXACT));
        }
        assertThat(SECTION.plates().get(1).getMinY()).isCloseTo(LAYOUT.planes().innerDepth() / 1e6, within(EXACT));
    }

    /** Hands of 100 mm and 70 mm (common practice, no source) on the centre arbor, towards the drum on the left. */
    @ParameterizedTest
    @CsvSource({"minute-hand, 100", "hour-hand, 70"})
    void hands_lie_in_the_section_before_the_plate_and_are_found_under_the_pointer(String name, double length) {
        SectionPlan plan = SectionPlan.of(WEEKLY);
        Piece hand = WEEKLY.front().pieces().stream()
                .filter(piece -> piece.name().equals(name))
                .findFirst()
                .orElseThrow();
        double face = plan.plates().get(1).getMaxY();
        double tip = plan.arbors().get(1) - length + 1;
        double up = face + hand.from() + 0.5;

        assertThat(plan.pieceAt(tip, up)).contains(hand);
        assertThat(plan.arborAt(tip, up)).contains(1);
        assertThat(plan.pieceAt(tip - 2, up)).isEmpty();
        assertThat(plan.bounds().contains(tip, up)).isTrue();
    }

    @Test
    void the_room_for_a_dial_runs_along_the_plates_and_is_found_where_nothing_stands_in_it() {
        SectionPlan plan = SectionPlan.of(WEEKLY);
        SectionPlan.Dial dial = plan.dial().orElseThrow();
        Rectangle2D plate = plan.plates().get(1);

        assertThat(dial.box().getMinX()).isEqualTo(plate.getMinX());
        assertThat(dial.box().getWidth()).isEqualTo(plate.getWidth());
        assertThat(dial.box().getMinY()).isCloseTo(plate.getMaxY() + dial.span().from(), within(EXACT));
        assertThat(plan.dialAt(plate.getMinX() + 1, dial.box().getCenterY())).contains(dial.span());
        // The hour wheel's pipe goes through it.
        assertThat(plan.dialAt(plan.arbors().get(1), dial.box().getCenterY())).isEmpty();
        assertThat(SECTION.dial()).isEmpty();
    }

    /**
     * 60/10 and 64/10 and 60/8 from the centre on: the pinion of each mesh turns z/p times as fast as its wheel and the other
     * way round.
     */
    @ParameterizedTest
    @CsvSource({"2, 3, 6.4", "3, 4, 7.5", "1, 2, 6", "0, 1, 7.2"})
    void marks_turn_with_the_true_ratios(int wheel, int pinion, double ratio) {
        Train train = SEEN.train();
        double driving = ElevationPainter.turned(train, 2, wheel, 0.01) - ElevationPainter.turned(train, 2, wheel, 0);
        double driven = ElevationPainter.turned(train, 2, pinion, 0.01) - ElevationPainter.turned(train, 2, pinion, 0);
        assertThat(driven / driving).isCloseTo(-ratio, within(1e-9));
    }

    @Test
    void the_centre_arbor_turns_clockwise() {
        assertThat(ElevationPainter.turned(SEEN.train(), 2, 2, 0.25)).isCloseTo(0, within(EXACT));
    }

    /** To the millionth of a millimetre, which is the nanometre that layouts are in. */
    @Test
    void width_and_height_are_measured_from_the_parts_that_reach_furthest() {
        ElevationPlan plan = ElevationPlan.of(PlacedTrains.seen());
        Box parts = PlacedTrains.layout().size().parts();

        assertThat(plan.rings())
                .anySatisfy(ring -> ends(ring, ring.x() - ring.radius(), parts.left(), plan.heightAt(parts.left())))
                .anySatisfy(ring -> ends(ring, ring.x() + ring.radius(), parts.right(), plan.heightAt(parts.right())));
        assertThat(plan.rings()).anySatisfy(ring -> {
            assertThat(ring.y() - ring.radius()).isCloseTo(parts.bottom() * 1e-6, within(1e-6));
            assertThat(ring.x()).isEqualTo(plan.acrossAt(parts.bottom()));
        });
    }

    private static void ends(Ring ring, double end, long edge, double height) {
        assertThat(end).isCloseTo(edge * 1e-6, within(1e-6));
        assertThat(ring.y()).isEqualTo(height);
    }

    @Test
    void numbers_stand_clear_of_other_arbors() {
        List<Point2D> arbors =
                List.of(new Point2D.Double(0, 0), new Point2D.Double(12, -12), new Point2D.Double(100, 0));
        List<Point2D> places = NumberPlaces.of(arbors, 15);
        for (Point2D place : places) {
            assertThat(arbors)
                    .allSatisfy(arbor -> assertThat(arbor.distance(place)).isGreaterThan(14.9));
        }
        assertThat(places.get(0).distance(places.get(1))).isGreaterThan(15);
    }
}
