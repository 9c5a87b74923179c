// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import drumfall.solver.brief.TrainReader;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.check.LayoutCheck;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.search.TrainSearch;
import drumfall.ui.terminal.TerminalBench.Run;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SolveCommandTest {
    private static List<Rating> front;

    /** Not in an initialiser: the search's threads would wait for the class, and the class for them. */
    @BeforeAll
    static void search() {
        front = TrainSearch.run(TerminalBench.small(), SearchListener.SILENT, () -> false)
                .front();
    }

    @TempDir
    Path folder;

    private TerminalBench bench;

    @BeforeEach
    void open() {
        bench = new TerminalBench(folder);
    }

    @Test
    void the_front_is_a_table_with_one_line_for_each_train_in_the_order_of_the_search() {
        Run run = bench.run("solve", "@small.json");

        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.err()).isEmpty();
        assertThat(run.lines().get(0))
                .isEqualTo("Small bench clock: %d trains, proved complete, directions tried every 15 degrees"
                        .formatted(front.size()));
        for (int i = 0; i < front.size(); i++) {
            assertThat(run.lines().get(3 + i).strip())
                    .startsWith(i + 1 + "  " + front.get(i).train());
        }
    }

    @Test
    void each_line_shows_the_figures_of_its_train() {
        String heading = bench.run("solve", "@small.json").lines().get(2);
        assertThat(heading.strip().split("  +", -1))
                .containsExactly(
                        "no.",
                        "train from the drum",
                        "drum",
                        "falls",
                        "duration",
                        "beats/h",
                        "pendulum",
                        "least weight",
                        "smooth to rough",
                        "recommended",
                        "filament",
                        "largest wheel",
                        "size");
    }

    @Test
    void the_cautions_about_a_hanging_weight_stand_under_the_table() {
        String after = bench.run("solve", "@small.json").out().replace('\n', ' ');
        assertThat(after.substring(after.indexOf("not the least that another layout might take.")))
                .contains("A hanging weight can fall.", "keep children and animals away", "licensed professional");
    }

    @Test
    void the_json_says_what_the_rating_says() {
        JsonNode options = bench.run("solve", "@small.json", "--json").json().get("options");

        assertThat(options).hasSameSizeAs(front);
        TrainRater rater = new TrainRater(TerminalBench.small());
        for (JsonNode option : options) {
            var sheet = TrainReader.read(option.get("train")).accepted().orElseThrow();
            Rating rating = rater.rate(sheet.train());
            assertThat(rating.feasible()).isTrue();
            assertThat(option.get("recommendedWeight_kg").doubleValue()).isEqualTo(rating.recommendedWeight());
            assertThat(option.get("leastWeight_kg").doubleValue())
                    .isEqualTo(rating.weight().leastWeight());
            assertThat(option.get("filamentMass_kg").doubleValue()).isEqualTo(rating.filamentMass());
            assertThat(option.get("pendulumLength_m").doubleValue()).isEqualTo(rating.pendulumLength());
            assertThat(option.at("/objectives/largestWheel_m").doubleValue())
                    .isEqualTo(rating.objectiveValues().get(2));
            // Rounded down to six decimals, so short by less than one of the last.
            double exact = rating.durationRoundedDown().doubleValue();
            assertThat(option.get("duration_h").doubleValue()).isBetween(exact - 1e-6, exact);
        }
    }

    /** The document is held against places found anew, whose independent check must find nothing. */
    @Test
    void each_train_stands_where_the_json_says() {
        JsonNode options = bench.run("solve", "@small.json", "--json").json().get("options");
        TrainPlacing placing = new TrainPlacing(new TrainRater(TerminalBench.small()));

        for (int i = 0; i < options.size(); i++) {
            JsonNode places = options.get(i).get("places");
            Layout layout =
                    placing.place(front.get(i).train(), () -> false).found().orElseThrow();
            assertThat(LayoutCheck.faults(layout)).isEmpty();
            for (int arbor = 0; arbor < layout.places().size(); arbor++) {
                assertThat(nanometres(places.at("/arbors/%d/x_mm".formatted(arbor))))
                        .isEqualTo(layout.place(arbor).x());
                assertThat(nanometres(places.at("/arbors/%d/y_mm".formatted(arbor))))
                        .isEqualTo(layout.place(arbor).y());
            }
            assertThat(places.at("/arbors/0/planes/0/part").textValue()).isEqualTo("drum");
            assertThat(nanometres(places.at("/arbors/0/planes/0/from_mm")))
                    .isEqualTo(layout.planes().drum().from());
            assertThat(nanometres(places.get("frameLeft_mm")))
                    .isEqualTo(layout.frameCorner().x());
            assertThat(nanometres(places.get("depth_mm"))).isEqualTo(layout.depth());
            // The brief's frame, and the grid that the heading names.
            assertThat(places.get("frameWidth_mm").intValue()).isEqualTo(220);
            assertThat(places.get("gridStep_deg").intValue()).isEqualTo(15);
        }
    }

    private static long nanometres(JsonNode millimetres) {
        return millimetres.decimalValue().movePointRight(6).longValueExact();
    }

    @Test
    void arbors_that_the_brief_leaves_unplaced_have_no_size() {
        bench.writeEdited("loose.json", "/frame/arrangement", "\"unplaced\"");
        Run run = bench.run("solve", "@loose.json", "--limit", "0 s");

        assertThat(run.lines().get(0)).isEqualTo("Small bench clock: 0 trains, stopped: may be incomplete");
        Run table = bench.run("solve", "@loose.json", "--hold=below-1.wheel=76", "--hold=above-1.wheel=77");
        assertThat(table.out().replace('\n', ' '))
                .contains("The brief leaves the arbors unplaced")
                .doesNotContain(" size", "directions");
    }

    @Test
    void a_limit_stops_early_and_says_so() {
        Run run = bench.run("solve", "@small.json", "--limit", "0 s");
        assertThat(run.code()).isEqualTo(ExitCode.STOPPED.number());
        assertThat(run.lines().get(0))
                .isEqualTo(
                        "Small bench clock: 0 trains, stopped: may be incomplete, directions tried every 15 degrees");
        assertThat(bench.run("solve", "@small.json", "--limit", "0 s", "--json")
                        .json()
                        .get("outcome")
                        .textValue())
                .isEqualTo("stopped");
    }

    // Searching for more than a thousand trains would take a minute; what a search gives then is the search's own test.
    @Test
    void a_front_told_apart_in_larger_steps_says_so_and_another_says_nothing() {
        FrontTable table = new FrontTable(TerminalBench.small(), UnitSystem.METRIC);
        SearchOutcome thinned = new SearchOutcome.Proved(List.of(), 4);
        assertThat(table.lines(thinned, List.of()))
                .contains("The brief's steps tell more than 1000 trains apart: searched in steps 4 times as large.");
        assertThat(FrontJson.of(TerminalBench.small(), thinned, List.of())
                        .get("stepsTimes")
                        .intValue())
                .isEqualTo(4);
        assertThat(String.join("\n", table.lines(new SearchOutcome.Proved(List.of()), List.of())))
                .doesNotContain("larger", "times");
    }

    @Test
    void an_interrupt_stops_early_and_says_so() {
        Run run = bench.runInterrupted("solve", "@small.json");
        assertThat(run.code()).isEqualTo(ExitCode.STOPPED.number());
        assertThat(run.out()).contains("stopped: may be incomplete");
    }

    @Test
    void a_brief_without_trains_names_the_clash_in_the_words_of_the_brief() {
        bench.writeEdited("long.json", "/run", "{\"atLeast\": \"20 d\", \"wanted\": \"3 week\", \"atMost\": \"22 d\"}");
        Run run = bench.run("solve", "@long.json");

        assertThat(run.code()).isEqualTo(ExitCode.NO_TRAIN.number());
        assertThat(run.lines())
                .containsExactly(
                        "Small bench clock: no train exists",
                        "No train meets these demands together, and no fewer demands clash:",
                        "the clock runs at least 20 d (/run/atLeast)");

        JsonNode clash = bench.run("solve", "@long.json", "--json").json().get("clash");
        assertThat(clash.get("smallest").booleanValue()).isTrue();
        assertThat(clash.at("/demands/0/demand").textValue()).isEqualTo("run-at-least");
        assertThat(clash.at("/demands/0/pointer").textValue()).isEqualTo("/run/atLeast");
    }

    @Test
    void what_is_held_is_kept_and_said() {
        Run run = bench.run(
                "solve",
                "@small.json",
                "--hold=below-1.wheel=76",
                "--hold=below-1.leaves=8",
                "--hold=above-1.module=1 mm",
                "--hold=drum=30 mm",
                "--hold=falls=1",
                "--hold=escape-wheel=30",
                "--hold=meshes-above=1",
                "--hold=meshes-below=2");

        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.out())
                .contains(
                        "Held fast: the wheel of mesh 1 below the centre is held at 76 teeth.",
                        "Held fast: the pinion of mesh 1 below the centre is held at 8 leaves.",
                        "Held fast: the module of mesh 1 above the centre is held at 1 mm.",
                        "Held fast: the drum is held at 30 mm.",
                        "Held fast: the falls of line are held at 1.",
                        "Held fast: the escape wheel is held at 30 teeth.",
                        "Held fast: the meshes above the centre are held at 1.",
                        "Held fast: the meshes below the centre are held at 2.");
        assertThat(run.lines().stream().filter(line -> line.contains(" | ")))
                .isNotEmpty()
                .allMatch(line -> line.contains("| 76/8 m1"))
                .allMatch(line -> line.contains(" m1 |"));
    }

    @Test
    void trains_for_the_plates_of_a_finished_clock_have_its_holes() {
        bench.write("clock.json", RateCommandTest.SOUND);
        List<String> holes =
                holes(bench.run("rate", "@small.json", "@clock.json", "--json").json());

        Run run = bench.run("solve", "@small.json", "--keep-holes", "@clock.json", "--json");

        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.json().get("options")).isNotEmpty();
        run.json().get("options").forEach(option -> assertThat(holes(option)).isEqualTo(holes));
    }

    /** Where every arbor stands, the pallets and the minute arbor too, and the corner of the frame, mm. */
    private static List<String> holes(JsonNode rated) {
        List<String> places = new ArrayList<>();
        rated.at("/places/arbors").forEach(arbor -> places.add(arbor.get("x_mm") + " " + arbor.get("y_mm")));
        places.add(rated.at("/places/frameLeft_mm") + " " + rated.at("/places/frameBottom_mm"));
        assertThat(places).hasSizeGreaterThan(5);
        return places;
    }

    @Test
    void what_is_kept_of_a_finished_clock_is_told_in_one_sentence_and_how_it_meets_the_brief_in_another() {
        bench.write("clock.json", RateCommandTest.SOUND);
        bench.run("rate", "@small.json", "@clock.json", "--write-layout", "@places.json");

        Run run = bench.run("solve", "@small.json", "--keep-holes", "@clock.json", "--layout", "@places.json");

        assertThat(run.err().lines()).hasSize(2);
        assertThat(run.err())
                .contains(
                        "Kept are the plates of ",
                        " centre distance and direction of its 3 meshes",
                        // 30 teeth, 7 1/2 spaces embraced: r_w / cos 45°, r_w of 26 mm.
                        ", the pallet arbor 36.769553 mm from the escape arbor",
                        "That train itself has a recommended weight of ");
        assertThat(run.out())
                .contains(
                        "Held fast: the centre distance of mesh 1 below the centre is held at 42 mm, its direction at ");
    }

    @Test
    void what_is_kept_of_a_finished_clock_stands_in_json_with_its_pointers() {
        bench.write("clock.json", RateCommandTest.SOUND);

        JsonNode front = bench.run("solve", "@small.json", "--keep-holes", "@clock.json", "--json")
                .json();

        assertThat(front.get("held"))
                .extracting(held -> held.get("pointer").textValue())
                .contains("/locks/meshes/0/distance", "/locks/meshes/0/direction", "/locks/palletDistance");
        assertThat(front.get("held"))
                .filteredOn(held -> held.get("pointer").textValue().equals("/locks/meshes/1/distance"))
                .singleElement()
                .satisfies(held -> {
                    assertThat(held.get("value").textValue()).isEqualTo("42 mm");
                    assertThat(held.get("text").textValue())
                            .isEqualTo("the centre distance of mesh 1 below the centre is held at 42 mm");
                });
        assertThat(front.get("dialFromLeft").textValue()).endsWith(" mm");
    }

    @Test
    void a_hold_takes_the_place_of_a_hole_that_is_kept() {
        bench.write("clock.json", RateCommandTest.SOUND);

        Run run = bench.run("solve", "@small.json", "--keep-holes", "@clock.json", "--hold=below-1.distance=1 m");

        assertThat(run.code()).isEqualTo(ExitCode.NO_TRAIN.number());
        assertThat(run.out()).contains("the centre distance of mesh 1 below the centre is held at 1 m");
    }

    @Test
    void locks_that_leave_nothing_are_named_as_the_clash() {
        Run run = bench.run("solve", "@small.json", "--hold=below-1.wheel=68", "--hold=below-2.wheel=68");
        assertThat(run.code()).isEqualTo(ExitCode.NO_TRAIN.number());
        assertThat(run.out())
                .contains(
                        "the pendulum is 0.45 m to 0.55 m long (/beat/pendulumLength)",
                        "the wheel of mesh 1 below the centre is held at 68 teeth (/locks/meshes/0/wheel)",
                        "the wheel of mesh 2 below the centre is held at 68 teeth (/locks/meshes/1/wheel)");
    }

    @Test
    void imperial_units_show_pounds_and_inches() {
        Run run = bench.run("solve", "@small.json", "--units", "imperial");
        assertThat(run.lines().get(3)).contains(" lb ", " in ", " oz ").doesNotContain(" kg", " mm ");
    }
}
