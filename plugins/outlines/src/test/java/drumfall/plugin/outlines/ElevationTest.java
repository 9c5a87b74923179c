// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.plugin.outlines.SvgFile.Circle;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.kit.Kit;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Reads the elevation and the plates back: circles against handbook centre distances, tables against drawings. */
class ElevationTest {
    /** Drawings are rounded to a tenth of a micrometre, layouts keep centre distances to one. */
    private static final double MICROMETRE = 1.1e-3;

    private static final SvgFile ELEVATION = SvgFile.of(Exports.FILES, "elevation.svg");

    /** Centre distance m (z + p) / 2 (ISO 54): 71.25, 47.5, 39 and 33.5 mm. */
    @ParameterizedTest
    @CsvSource({"0, 63.75, 7.5, 71.25", "1, 41.5, 6, 47.5", "2, 33, 6, 39", "3, 27.5, 6, 33.5"})
    void pitch_circles_in_mesh_touch_at_the_centre_distance(int mesh, double wheel, double pinion, double distance) {
        Circle driver = ELEVATION.circles("pitch").get(2 * mesh);
        Circle driven = ELEVATION.circles("pitch").get(2 * mesh + 1);
        assertThat(driver.radius()).isCloseTo(wheel, within(MICROMETRE));
        assertThat(driven.radius()).isCloseTo(pinion, within(MICROMETRE));
        assertThat(driver.centre().distance(driven.centre())).isCloseTo(distance, within(MICROMETRE));
    }

    /** Cannon pinion and minute wheel, hour wheel and minute pinion: both pairs on one centre distance, the product 12. */
    @Test
    void the_motion_work_touches_on_one_centre_distance_and_turns_the_hour_hand_in_twelve_hours() {
        List<Circle> pitch = ELEVATION.circles("pitch").subList(8, 12);
        double apart = pitch.get(0).centre().distance(pitch.get(1).centre());
        assertThat(pitch.get(0).radius() + pitch.get(1).radius()).isCloseTo(apart, within(MICROMETRE));
        assertThat(pitch.get(2).radius() + pitch.get(3).radius()).isCloseTo(apart, within(MICROMETRE));
        assertThat(pitch.get(0).centre().distance(new Point(0, 0)))
                .as("dial centre")
                .isZero();
        double hours = pitch.get(1).radius()
                / pitch.get(0).radius()
                * pitch.get(2).radius()
                / pitch.get(3).radius();
        assertThat(hours).isCloseTo(12, within(0.01));
    }

    @Test
    void layers_are_named_by_what_they_hold() {
        assertThat(ELEVATION.layers())
                .containsExactlyInAnyOrder(
                        "frame",
                        "pillars",
                        "drum",
                        "wheels",
                        "pinions",
                        "escape-wheel",
                        "pallets",
                        "arbors",
                        "hubs",
                        "motion-work",
                        "pitch",
                        "line",
                        "weight-path",
                        "dial-centre",
                        "numbers",
                        "dimensions",
                        "notes");
        assertThat(ELEVATION.layer("pitch").hasAttribute("stroke-dasharray")).isTrue();
        assertThat(ELEVATION.circles("pillars")).hasSize(4);
    }

    @Test
    void arbors_are_numbered_from_the_drum() {
        assertThat(ELEVATION.texts("numbers"))
                .containsExactly("1 drum", "2 centre", "3", "4", "5 escape", "pallets", "minute wheel");
    }

    // By hand: depthings of 71.25 and 47.5 mm along the vertical, then 39 mm at 105° and 33.5 mm at 60°:
    // 47.5 + 39 sin 105° = 85.171, 85.171 + 33.5 sin 60° = 114.183; 39 cos 105° = -10.094, -10.094 + 33.5 / 2 = 6.656.
    @Test
    void dimensions_give_the_arbors_from_the_dial_centre() {
        assertThat(ELEVATION.texts("dimensions"))
                .contains("-71.25", "0", "47.5", "85.171", "114.183", "-10.094", "6.656");
    }

    /** The sheet of the holes, its table and the CSV say the same. */
    @ParameterizedTest
    @ValueSource(strings = {"front", "back"})
    void a_plates_holes_are_where_the_table_says(String plate) {
        SvgFile svg = SvgFile.of(Exports.FILES, plate + "-plate-holes.svg");
        List<String> lines =
                Exports.FILES.text(plate + "-plate-holes.csv").lines().skip(1).toList();
        List<Circle> holes = svg.circles("holes");
        assertThat(lines).hasSameSizeAs(holes);
        List<String> table = svg.texts("table");
        for (int i = 0; i < holes.size(); i++) {
            String[] fields = lines.get(i).split(",", -1);
            assertThat(fields).hasSize(12);
            assertThat(holes.get(i).centre().x()).isCloseTo(Double.parseDouble(fields[2]), within(MICROMETRE));
            assertThat(holes.get(i).centre().y()).isCloseTo(Double.parseDouble(fields[3]), within(MICROMETRE));
            assertThat(2 * holes.get(i).radius()).isCloseTo(Double.parseDouble(fields[6]), within(MICROMETRE));
            for (String field : List.of(fields).subList(0, 10)) {
                assertThat(field.isEmpty() || table.contains(field)).as(field).isTrue();
            }
            assertThat(table).contains(fields[11]);
        }
    }

    /**
     * The demo brief by hand: frame 220 mm by 320 mm, pillars of 14 mm set in 12 mm; rods with 0.1 mm clearance, drilled with
     * the next metric drill, drawn 0.15 mm smaller for the skim and 0.1 mm larger for shrinkage; bearing 4 x 13 x 5 mm (ISO
     * 15, series 02) in a seat without clearance.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1,arbor 1,0,-71.25,110,      | ,4.05,4.1 mm,12.95,5,13 mm,a bearing sits in the seat
            2,arbor 2,0,0,110,           | ,3.05,3.1 mm,,,,the rod turns in it
            3,arbor 3,0,47.5,110,        | ,1.95,2 mm,,,,it holds the rod
            P1,pillar 1,-98,              | ,12,12,4.2,,14.3,3,,screw; the pillar stands in the seat
            P4,pillar 4,98,              | ,208,308,4.2,,14.3,3,,screw; the pillar stands in the seat
            """)
    void holes_have_the_diameters_of_the_brief(String start, String end) {
        assertThat(Exports.FILES.text("back-plate-holes.csv").lines())
                .anyMatch(line -> line.startsWith(start) && line.endsWith(end));
    }

    @Test
    void where_the_brief_has_no_size_of_a_bearing_the_hole_for_the_rod_is_given_and_said_to_be_that() {
        String text = BundledBriefs.text(BundledBriefs.WEEKLY_WALL_CLOCK)
                .orElseThrow()
                .replaceFirst(",\\s*\"bearing\": \\{\\s*\"outer\"[^}]*}", "");
        TrainRater rater = new TrainRater(BriefReader.read(text).accepted().orElseThrow());
        Kit kit = Kit.of(rater, Exports.PLACED.rating(), Exports.PLACED.layout());
        PlateHoles.Hole hole = PlateHoles.of(kit).get(0).holes().get(0);
        assertThat(hole.drawn()).isEqualTo(4_050_000);
        assertThat(hole.seat()).isEmpty();
        assertThat(hole.use()).contains("its size is not in the brief", "only the rod's hole");
    }

    /** Both plates share their numbers; the minute stud is in the front plate alone. */
    @Test
    void a_hole_has_one_number_in_both_plates() {
        List<String> front = numbers("front");
        List<String> back = numbers("back");
        assertThat(front).containsAll(back).contains("7,minute stud").hasSize(back.size() + 1);
    }

    private static List<String> numbers(String plate) {
        return Exports.FILES
                .text(plate + "-plate-holes.csv")
                .lines()
                .skip(1)
                .map(line -> line.substring(0, line.indexOf(',', line.indexOf(',') + 1)))
                .toList();
    }

    /** By hand: 0 and 1 are pushed apart evenly to 4, 10 stays. */
    @Test
    void figures_keep_apart_and_near_to_what_they_measure() {
        assertThat(Ordinates.spread(List.of(0.0, 1.0, 10.0), 4)).containsExactly(-1.5, 2.5, 10.0);
    }

    @Test
    void figures_never_cover_each_other_and_no_single_step_brings_one_nearer() {
        Random random = new Random(128);
        for (int sample = 0; sample < 50; sample++) {
            List<Double> values = random.doubles(8, 0, 40).sorted().boxed().toList();
            List<Double> places = Ordinates.spread(values, 4);
            for (int i = 1; i < places.size(); i++) {
                assertThat(places.get(i) - places.get(i - 1)).isGreaterThanOrEqualTo(4 - 1e-9);
            }
            assertThat(cost(values, places)).isLessThanOrEqualTo(cost(values, pushedUp(values)) + 1e-9);
        }
    }

    private static double cost(List<Double> values, List<Double> places) {
        double sum = 0;
        for (int i = 0; i < values.size(); i++) {
            sum += Math.pow(values.get(i) - places.get(i), 2);
        }
        return sum;
    }

    /** The plain way: each at its value or just above the one before it. */
    private static List<Double> pushedUp(List<Double> values) {
        List<Double> places = new ArrayList<>();
        for (double value : values) {
            places.add(places.isEmpty() ? value : Math.max(value, places.get(places.size() - 1) + 4));
        }
        return places;
    }
}
