// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.Brief;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.StripFigure;
import drumfall.ui.presenter.StripFigure.Kind;
import drumfall.ui.presenter.TrainStripContent;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class StripPlanTest {
    private static final TabularText TEXT = new TabularText(new Font(Font.SANS_SERIF, Font.PLAIN, 13));

    /** Antialiasing spreads an edge over half a pixel on either side. */
    private static final double EDGE = 0.5;

    static StripPlan plan(TrainStripContent content, int width, int height, double unit) {
        return StripPlanner.plan(content, content.rating().orElseThrow(), new Dimension(width, height), unit, TEXT);
    }

    private static StripPlan plan(Train train) {
        return plan(SampleTrains.content(train), 1440, 262, 1);
    }

    /** Widths a window may have, with 2 to 8 meshes, chosen, held and tried. */
    private static final List<StripPlan> PLANS = IntStream.rangeClosed(2, 8)
            .boxed()
            .flatMap(meshes -> Stream.of(900, 1100, 1440, 1920, 2600).flatMap(width -> plans(meshes, width)))
            .toList();

    static List<StripPlan> plans() {
        return PLANS;
    }

    private static Stream<StripPlan> plans(int meshes, int width) {
        Train train = SampleTrains.of(meshes);
        Brief held = SampleTrains.heldBrief();
        Optional<Train> tried = Optional.of(SampleTrains.withWheel(train, meshes - 1, 57));
        return Stream.of(
                plan(SampleTrains.content(train), width, 230, 1),
                plan(SampleTrains.content(train, held, Optional.empty()), width, 262, 1),
                plan(SampleTrains.content(train, held, tried), width, 262, 1),
                plan(SampleTrains.content(train, SampleTrains.onDrilledPlates(train), Optional.empty()), width, 262, 1),
                plan(
                        SampleTrains.content(
                                SampleTrains.of(Math.max(1, meshes - 4), Math.min(4, meshes - 1), Reeving.SINGLE)),
                        width,
                        230,
                        1),
                plan(SampleTrains.content(train, held, Optional.empty()), 2 * width, 520, 2));
    }

    /** The same as usual, and with letters at 160 %. */
    static Stream<StripPlan> plansAtTwoSizes() {
        return Stream.concat(
                PLANS.stream(),
                IntStream.rangeClosed(2, 8)
                        .boxed()
                        .flatMap(meshes -> Stream.of(1440, 1920, 2600)
                                .map(width -> plan(SampleTrains.content(SampleTrains.of(meshes)), width, 419, 1.6))));
    }

    private static List<Rectangle2D> labels(StripPlan plan) {
        List<Rectangle2D> boxes = new ArrayList<>();
        plan.spots().forEach(spot -> boxes.add(shrunk(spot.box())));
        plan.notes().forEach(note -> boxes.add(shrunk(note.box(TEXT))));
        return boxes;
    }

    private static Rectangle2D shrunk(Rectangle2D box) {
        return new Rectangle2D.Double(
                box.getX() + EDGE, box.getY() + EDGE, box.getWidth() - 2 * EDGE, box.getHeight() - 2 * EDGE);
    }

    @ParameterizedTest
    @MethodSource("plansAtTwoSizes")
    void no_label_overlaps_another(StripPlan plan) {
        List<Rectangle2D> labels = labels(plan);
        for (int i = 0; i < labels.size(); i++) {
            for (int j = i + 1; j < labels.size(); j++) {
                assertThat(labels.get(i).intersects(labels.get(j)))
                        .as("%s and %s", labels.get(i), labels.get(j))
                        .isFalse();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("plansAtTwoSizes")
    void no_label_runs_under_the_weight(StripPlan plan) {
        StripFrame frame = plan.frame();
        double half = frame.weightHalf();
        Rectangle2D weight = new Rectangle2D.Double(
                frame.weightX(plan.lineOnTheRight(), plan.falls()) - half,
                frame.weightTop(),
                2 * half,
                frame.weightBottom() - frame.weightTop());
        assertThat(labels(plan))
                .allSatisfy(
                        box -> assertThat(box.intersects(weight)).as("%s", box).isFalse());
    }

    @ParameterizedTest
    @MethodSource("plansAtTwoSizes")
    void every_label_stands_on_the_strip(StripPlan plan) {
        Rectangle2D sheet =
                new Rectangle2D.Double(0, 0, plan.frame().width(), plan.frame().height());
        assertThat(labels(plan))
                .allSatisfy(box -> assertThat(sheet.contains(box)).as("%s", box).isTrue());
    }

    @ParameterizedTest
    @MethodSource("plans")
    void neighbouring_wheels_do_not_touch(StripPlan plan) {
        StripFrame frame = plan.frame();
        List<TrainFaces.MeshFace> meshes = frame.faces().meshes();
        for (int i = 1; i < meshes.size(); i++) {
            double tips = (meshes.get(i - 1).wheelTip() + meshes.get(i).wheelTip()) * frame.scale();
            assertThat(tips).isLessThan(frame.wheelX(i) - frame.wheelX(i - 1));
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void figures_below_a_wheel_keep_clear_of_all_wheels(StripPlan plan) {
        StripFrame frame = plan.frame();
        List<Rectangle2D> below = plan.spots().stream()
                .filter(spot -> spot.figure()
                        .filter(f -> f.kind() == Kind.LEAVES || f.kind() == Kind.MODULE)
                        .isPresent())
                .map(StripSpot::box)
                .toList();
        for (int i = 0; i < frame.faces().meshes().size(); i++) {
            Point2D centre = new Point2D.Double(frame.wheelX(i), frame.axis());
            double tip = frame.faces().meshes().get(i).wheelTip() * frame.scale();
            assertThat(below)
                    .allSatisfy(box -> assertThat(distance(centre, box)).isGreaterThan(tip));
        }
    }

    private static double distance(Point2D point, Rectangle2D box) {
        double x = Math.max(box.getMinX(), Math.min(box.getMaxX(), point.getX()));
        double y = Math.max(box.getMinY(), Math.min(box.getMaxY(), point.getY()));
        return point.distance(x, y);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6, 7, 8})
    void every_count_is_there(int meshes) {
        Train train = SampleTrains.of(meshes);
        StripPlan plan = plan(train);
        assertThat(shown(plan, Kind.WHEEL))
                .isEqualTo(train.meshes().stream()
                        .map(Mesh::toothCount)
                        .map(String::valueOf)
                        .toList());
        assertThat(shown(plan, Kind.LEAVES))
                .isEqualTo(train.meshes().stream()
                        .map(Mesh::leafCount)
                        .map(String::valueOf)
                        .toList());
        assertThat(shown(plan, Kind.MODULE))
                .isEqualTo(train.meshes().stream()
                        .map(mesh -> mesh.module().toString())
                        .toList());
        assertThat(shown(plan, Kind.ESCAPE_TEETH)).containsExactly(String.valueOf(train.escapeTeeth()));
        assertThat(shown(plan, Kind.FALLS))
                .containsExactly(String.valueOf(train.reeving().falls()));
        assertThat(shown(plan, Kind.DRUM)).containsExactly("36");
        assertThat(shown(plan, Kind.MESHES_ABOVE)).containsExactly(String.valueOf(train.meshesAbove()));
        assertThat(shown(plan, Kind.MESHES_BELOW))
                .containsExactly(String.valueOf(train.below().size()));
    }

    private static List<String> shown(StripPlan plan, Kind kind) {
        return plan.spots().stream()
                .filter(spot ->
                        spot.figure().filter(figure -> figure.kind() == kind).isPresent())
                .map(spot -> spot.shown().number())
                .toList();
    }

    @Test
    void a_held_centre_distance_is_shown_under_its_module_and_no_other_is() {
        Train train = SampleTrains.of(4);
        StripPlan held =
                plan(SampleTrains.content(train, SampleTrains.onDrilledPlates(train), Optional.empty()), 1440, 262, 1);

        assertThat(shown(held, Kind.DISTANCE))
                .isEqualTo(train.meshes().stream()
                        // m (z + p) / 2
                        .map(mesh -> new BigDecimal(mesh.module().toString())
                                .multiply(BigDecimal.valueOf(mesh.toothCount() + mesh.leafCount()))
                                .divide(BigDecimal.valueOf(2))
                                .stripTrailingZeros()
                                .toPlainString())
                        .toList());
        assertThat(of(held, Kind.DISTANCE)).allMatch(StripSpot::held);
        assertThat(shown(plan(train), Kind.DISTANCE)).isEmpty();
    }

    @Test
    void each_arbor_has_its_torque_and_power() {
        StripPlan plan = plan(SampleTrains.of(4));
        for (int arbor = 0; arbor <= 4; arbor++) {
            assertThat(plan.of(new StripReading(StripReading.Kind.TORQUE, arbor)))
                    .isPresent();
            assertThat(plan.of(new StripReading(StripReading.Kind.POWER, arbor)))
                    .isPresent();
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void a_click_in_the_middle_of_a_figure_hits_it(StripPlan plan) {
        assertThat(plan.spots())
                .allSatisfy(spot -> assertThat(
                                plan.at(spot.box().getCenterX(), spot.box().getCenterY()))
                        .contains(spot));
    }

    @Test
    void a_click_beside_all_figures_hits_none() {
        StripPlan plan = plan(SampleTrains.of(4));
        assertThat(plan.at(plan.frame().drumX(), plan.frame().axis())).isEmpty();
    }

    @Test
    void figures_are_read_from_the_weight_to_the_pendulum() {
        StripPlan plan = plan(SampleTrains.of(4));
        List<Kind> order = plan.spots().stream()
                .flatMap(spot -> spot.figure().stream())
                .map(StripFigure::kind)
                .distinct()
                .toList();
        assertThat(order)
                .containsExactly(
                        Kind.FALLS,
                        Kind.DRUM,
                        Kind.MESHES_ABOVE,
                        Kind.WHEEL,
                        Kind.LEAVES,
                        Kind.MODULE,
                        Kind.MESHES_BELOW,
                        Kind.ESCAPE_TEETH);
    }

    @ParameterizedTest
    @MethodSource("plans")
    void wheels_stand_from_the_drum_to_the_right_each_over_its_pinion(StripPlan plan) {
        List<StripSpot> wheels = of(plan, Kind.WHEEL);
        List<StripSpot> leaves = of(plan, Kind.LEAVES);
        for (int i = 0; i < wheels.size(); i++) {
            assertThat(wheels.get(i).box().getCenterX()).isEqualTo(plan.frame().wheelX(i));
            assertThat(leaves.get(i).box().getCenterX()).isEqualTo(plan.frame().wheelX(i));
            assertThat(wheels.get(i).box().getMaxY())
                    .isLessThan(leaves.get(i).box().getMinY());
        }
    }

    private static List<StripSpot> of(StripPlan plan, Kind kind) {
        return plan.spots().stream()
                .filter(spot ->
                        spot.figure().filter(figure -> figure.kind() == kind).isPresent())
                .toList();
    }

    @Test
    void exactly_what_the_brief_holds_is_marked_held() {
        Train train = SampleTrains.of(4);
        StripPlan plan = plan(SampleTrains.content(train, SampleTrains.heldBrief(), Optional.empty()), 1440, 262, 1);
        assertThat(plan.spots().stream()
                        .filter(StripSpot::held)
                        .map(StripSpot::name)
                        .toList())
                .containsExactly(
                        "Drum diameter: 36 mm, held",
                        "Wheel of mesh 1: 85, held",
                        "Meshes below the centre: 3, held",
                        "Pinion of mesh 2: 12, held",
                        "Module of mesh 2: 1.5, held");
    }

    @Test
    void a_trial_shows_old_and_new_where_they_differ_and_only_there() {
        Train train = SampleTrains.of(4);
        Train tried = SampleTrains.withWheel(train, 2, 61);
        StripPlan plan = plan(SampleTrains.content(train, SampleTrains.brief(), Optional.of(tried)), 1440, 262, 1);
        List<String> differing = plan.spots().stream()
                .filter(spot -> spot.figure().isPresent() && spot.tried().isPresent())
                .map(StripSpot::name)
                .toList();
        assertThat(differing).containsExactly("Wheel of mesh 3: 63, tried 61");
        assertThat(plan.of(StripReading.of(StripReading.Kind.BEAT))
                        .orElseThrow()
                        .tried())
                .isPresent();
        assertThat(plan.of(StripReading.of(StripReading.Kind.WEIGHT))
                        .orElseThrow()
                        .tried())
                .isPresent();
        assertThat(plan.of(StripReading.of(StripReading.Kind.RUN)).orElseThrow().tried())
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("plans")
    void the_mark_of_a_missed_demand_stands_within_the_strip_and_its_column(StripPlan plan) {
        double unit = plan.frame().unit();
        assertThat(plan.spots()).filteredOn(spot -> spot.reading().isPresent()).allSatisfy(spot -> {
            double x = spot.missedMark(unit);
            assertThat(x - FigurePainter.MARK * unit).isPositive();
            assertThat(x + FigurePainter.MARK * unit).isLessThan(plan.frame().width());
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {900, 1440, 2600})
    void how_a_trial_stands_is_written_in_the_room_that_is_left(int width) {
        Train train = SampleTrains.of(4);
        String sentence = "Beaten by another train in everything that was asked for, "
                .repeat(4)
                .strip();
        TrainStripContent content = SampleTrains.content(
                        train, SampleTrains.brief(), Optional.of(SampleTrains.withWheel(train, 2, 61)))
                .saying(Optional.of(sentence));
        StripPlan plan = plan(content, width, 262, 1);
        StripPlan.Note written = plan.notes().stream()
                .filter(note -> note.text().startsWith("Beaten by"))
                .findFirst()
                .orElseThrow();
        StripPlan.Note keys = plan.notes().stream()
                .filter(note -> note.text().startsWith("Tried:"))
                .findFirst()
                .orElseThrow();
        assertThat(written.box(TEXT).getMaxX()).isLessThan(keys.box(TEXT).getMinX());
        boolean whole = written.text().equals(sentence);
        assertThat(whole || written.text().endsWith("…")).isTrue();
        assertThat(whole).isEqualTo(width == 2600);
    }

    @Test
    void a_trial_above_the_centre_changes_the_run() {
        Train train = SampleTrains.of(4);
        Train tried = SampleTrains.withWheel(train, 0, 90);
        StripPlan plan = plan(SampleTrains.content(train, SampleTrains.brief(), Optional.of(tried)), 1440, 262, 1);
        assertThat(plan.of(StripReading.of(StripReading.Kind.RUN)).orElseThrow().tried())
                .isPresent();
    }

    @Test
    void a_missed_demand_marks_its_reading_and_says_so() {
        StripPlan plan = plan(SampleTrains.of(2));
        assertThat(plan.of(StripReading.of(StripReading.Kind.WEIGHT))
                        .orElseThrow()
                        .missed())
                .isTrue();
        assertThat(plan.notes()).anySatisfy(note -> {
            assertThat(note.tone()).isEqualTo(StripPlan.Tone.MISSED);
            assertThat(note.text()).contains("Runs 3.7");
        });
    }

    @Test
    void a_train_that_meets_the_brief_carries_no_mark() {
        StripPlan plan = plan(SampleTrains.of(4));
        assertThat(plan.spots()).noneMatch(StripSpot::missed);
        assertThat(plan.notes()).noneMatch(note -> note.tone() == StripPlan.Tone.MISSED);
    }

    @Test
    void the_caution_stands_beside_the_weight() {
        StripPlan plan = plan(SampleTrains.of(4));
        Rectangle2D weight =
                plan.of(StripReading.of(StripReading.Kind.WEIGHT)).orElseThrow().box();
        assertThat(plan.notes()).anySatisfy(note -> {
            assertThat(note.text()).isEqualTo(TrainText.of("caution"));
            assertThat(note.x()).isLessThan(weight.getMaxX());
        });
    }
}
