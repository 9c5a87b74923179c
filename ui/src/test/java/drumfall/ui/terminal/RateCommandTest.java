// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import drumfall.ui.terminal.TerminalBench.Run;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RateCommandTest {
    static final String SOUND = train("77, 9", "76, 8", "75, 8");

    // E. Beckett, A Rudimentary Treatise on Clocks, Watches and Bells, 8th ed., 1903, p. 133: pinions of 8, wheels of
    // 96,
    // 64 and 60, escape wheel of 30: great wheel in 12 hours, escape arbor in a minute, 3600 beats an hour.
    private static final String BECKETT = train("96, 8", "64, 8", "60, 8");

    private static final Map<List<String>, Run> RUNS = new ConcurrentHashMap<>();

    @TempDir
    Path folder;

    private TerminalBench bench;

    @BeforeEach
    void open() {
        bench = new TerminalBench(folder);
        bench.write("sound.json", SOUND);
        bench.write("beckett.json", BECKETT);
    }

    /** Commands keep nothing between runs, so the same command on the same files need not be run for every claim about it. */
    private Run once(String... arguments) {
        return RUNS.computeIfAbsent(List.of(arguments), command -> bench.run(arguments));
    }

    private Run sound(String... options) {
        return once(Stream.concat(Stream.of("rate", "@small.json", "@sound.json"), Stream.of(options))
                .toArray(String[]::new));
    }

    private Run beckett() {
        return once("rate", "@small.json", "@beckett.json");
    }

    static String train(String... meshes) {
        StringBuilder entries = new StringBuilder();
        for (String mesh : meshes) {
            String[] counts = mesh.split(", ", -1);
            entries.append(entries.length() == 0 ? "" : ", ")
                    .append("{\"wheel\": %s, \"leaves\": %s, \"module\": \"1 mm\"}".formatted(counts[0], counts[1]));
        }
        return """
                {"format": "drumfall-train", "version": 1, "name": "Bench train", "meshes": [%s], "meshesAbove": 1,
                 "drumDiameter": "30 mm", "falls": 1, "escapeTeeth": 30}
                """.formatted(entries);
    }

    @Test
    void a_train_that_meets_every_demand_ends_well() {
        Run run = sound();
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.lines().subList(0, 3))
                .containsExactly(
                        "Bench train, held against Small bench clock",
                        "77/9 m1 | 76/8 m1 · 75/8 m1 · E30",
                        "All 41 demands are met.");
        assertThat(run.out()).doesNotContain("MISSED");
    }

    @Test
    void a_missed_demand_stands_beside_its_limit() {
        Run run = beckett();
        assertThat(run.code()).isEqualTo(ExitCode.DEMAND_MISSED.number());
        // The seconds pendulum of standard gravity: 9.80665 / pi^2 = 0.9936 m at a small arc, here kept at 3.5 degrees.
        assertThat(line(run, "pendulum length").split("  +", -1))
                .containsExactly("MISSED", "pendulum length", "993 mm", "450 mm to 550 mm");
        assertThat(run.out()).contains("of 41 demands are missed.");
    }

    // A reserve of 1 % over what runs in the middle of all bands serves few, of 500 % all.
    @ParameterizedTest
    @CsvSource({"1 %, true", "500 %, false"})
    void a_share_of_builders_that_is_asked_for_stands_beside_what_the_weight_serves(String reserve, boolean missed) {
        bench.writeEdited("asking.json", "/weight", """
                {"limit": "400 kg", "reserve": "%s", "bindingReserve": "25 %%", "width": "90 mm", "builders": "95 %%"}
                """.formatted(reserve));

        Run run = bench.run("rate", "@asking.json", "@sound.json");
        String builders = line(run, "share of builders the weight serves");

        assertThat(builders).endsWith("at least 95 %").containsPattern("[0-9]+[.][0-9] % ");
        assertThat(builders.contains("MISSED")).isEqualTo(missed);
        assertThat(run.lines()).anyMatch(line -> line.contains(" 42 demands "));
        assertThat(bench.run("rate", "@asking.json", "@sound.json", "--why", "builders-served")
                        .out())
                .contains("builders-that-run", "recommended-weight")
                .containsPattern("^builders-served: .*[0-9][.][0-9] %");
        // What a program reads stays a plain number.
        JsonNode json =
                bench.run("rate", "@asking.json", "@sound.json", "--json").json();
        assertThat(json.get("demands"))
                .filteredOn(demand -> demand.get("pointer").asText().equals("/weight/builders"))
                .allSatisfy(demand -> {
                    assertThat(demand.get("from_SI").doubleValue()).isEqualTo(0.95);
                    assertThat(demand.get("figure_SI").doubleValue()).isBetween(0.0, 1.0);
                })
                .hasSize(1);
    }

    private static String line(Run run, String part) {
        return run.lines().stream()
                .filter(line -> line.contains(part))
                .findFirst()
                .orElseThrow()
                .strip();
    }

    @Test
    void a_published_train_shows_its_published_arithmetic() {
        Run run = beckett();
        assertThat(run.out())
                .contains(
                        "Beats an hour: 3600 (3600); seconds a beat: 1.",
                        "Arbor 4 turns once a minute, the same way as the centre, and can carry a seconds hand.",
                        "Seen from the dial the line leaves the drum on the left.");
        List<String> arbors = run.lines();
        int table = arbors.indexOf("Arbors, numbered from the drum");
        assertThat(arbors.subList(table + 2, table + 6).stream()
                        .map(line -> line.strip().replaceAll("  +", "|"))
                        .toList())
                .containsExactly(
                        "1|drum|12|1/12|anticlockwise",
                        "2|centre, minute hand|1|1|clockwise",
                        "3|intermediate|1/8|8|anticlockwise",
                        "4|escape wheel|1/60|60|clockwise");
    }

    @Test
    void efficiencies_carry_the_label_of_what_they_rest_on() {
        Run run = sound();
        String label = new TrainRater(TerminalBench.small()).movement().teeth().label();
        assertThat(run.out()).contains(label, "A hanging weight can fall.");
    }

    @Test
    void the_ratchet_is_told_beside_what_it_may_bear() {
        Run run = sound();
        JsonNode json = sound("--json").json();
        JsonNode ratchet = json.at("/answers/ratchet");
        int demanded = json.path("demands").findValuesAsText("demand").indexOf("ratchet");
        double figure = json.path("demands").get(demanded).path("figure_SI").doubleValue();

        assertThat(run.out()).contains("The click presses a tooth of the ratchet with ");
        // With the recommended weight hung, the answer at the bench is the demand's figure; 1e-9 of it for rounding.
        assertThat(ratchet.path("toothBending_Pa").doubleValue()).isCloseTo(figure, within(1e-9 * figure));
        assertThat(ratchet.path("pinShear_Pa").doubleValue()).isPositive();
    }

    @Test
    void weight_and_bob_are_told_where_the_arbors_stand() {
        JsonNode beside = sound("--json").json().path("weightBesideBob");

        assertThat(beside.path("verdict").textValue()).isIn("clear", "plane-unknown");
        assertThat(beside.path("across_m").isNull()).isTrue();
        assertThat(beside.path("gap_m").doubleValue())
                .isEqualTo(Math.max(
                        beside.path("aside_m").doubleValue(),
                        beside.path("upright_m").doubleValue()));
        assertThat(sound().out()).contains("the swinging bob");
    }

    @Test
    void the_placed_weight_says_where_it_comes_from() {
        Run run = bench.run("rate", "@small.json", "@sound.json", "--why", "placed-least-weight");

        assertThat(run.out())
                .contains("W′ = max(W′_running, W′_binding)", "placed-torque-in-1-running", "/friction/bores/low");
    }

    // Least favourable directions are the worst of all directions.
    @Test
    void the_least_weight_of_the_placed_train_stands_beside_the_unplaced_one() {
        JsonNode json = sound("--json").json();
        double placed = json.path("leastWeightPlaced_kg").doubleValue();

        assertThat(placed)
                .isPositive()
                .isLessThanOrEqualTo(json.path("leastWeight_kg").doubleValue());
        assertThat(sound().out())
                .contains("So placed, with every force where it is and as it points, the least running weight is ");
    }

    @Test
    void the_json_holds_every_figure_of_the_rating() {
        JsonNode json = sound("--json").json();
        Rating rating = new TrainRater(TerminalBench.small()).rate(soundTrain());

        assertThat(json.get("feasible").booleanValue()).isTrue();
        assertThat(json.get("demands")).hasSameSizeAs(rating.demands());
        for (int i = 0; i < rating.demands().size(); i++) {
            assertThat(json.at("/demands/%d/figure_SI".formatted(i)).doubleValue())
                    .isEqualTo(rating.demands().get(i).figure());
        }
        assertThat(json.get("beatsPerHourExact").textValue()).isEqualTo("21375/4");
        assertThat(json.at("/arbors/0/hoursPerTurnExact").textValue()).isEqualTo("77/9");
        assertThat(json.at("/arbors/0/outRunning_Nm").doubleValue())
                .isEqualTo(rating.weight().running().arbors().get(0).out());
        assertThat(json.at("/meshes/1/efficiencyBinding").doubleValue())
                .isEqualTo(rating.weight().binding().arbors().get(1).passed());
        assertThat(json.get("weightRunning_kg").doubleValue())
                .isEqualTo(rating.weight().running().weight());
        assertThat(json.get("lineLeavesDrum").textValue()).isEqualTo("left");
        assertThat(json.get("secondsArbor").isNull()).isTrue();
    }

    private static Train soundTrain() {
        ToothModule module = ToothModule.ofMillimetres("1");
        return new Train(
                List.of(Mesh.of(77, 9, module), Mesh.of(76, 8, module), Mesh.of(75, 8, module)),
                1,
                BigFraction.of(3, 100),
                Reeving.SINGLE,
                30);
    }

    @Test
    void a_train_that_no_weight_drives_has_no_number_for_it() {
        // No pinion of these has a pitch radius that overcomes a bore of 20 mm radius with a coefficient of friction
        // near 2.
        ObjectNode tree = (ObjectNode) TerminalBench.json(TerminalBench.smallText());
        ((ObjectNode) tree.at("/arbors/intermediate")).put("diameter", "40 mm").put("bearings", "none");
        ((ObjectNode) tree.at("/friction/bores")).put("low", "1.9").put("high", "2");
        bench.write("stuck.json", tree.toPrettyString());

        Run table = bench.run("rate", "@stuck.json", "@sound.json");
        assertThat(table.code()).isEqualTo(ExitCode.DEMAND_MISSED.number());
        assertThat(table.out()).contains("Least running weight: no weight drives it");
        assertThat(bench.run("rate", "@stuck.json", "@sound.json", "--json")
                        .json()
                        .get("leastWeight_kg")
                        .isNull())
                .isTrue();
    }

    @Test
    void the_json_keeps_books_answers_chance_and_where_from() {
        JsonNode json = sound("--json").json();
        double total = 0;
        for (JsonNode entry : json.at("/books/entries")) {
            total += entry.get("power_W").doubleValue();
        }

        // The books balance to 1e-9 of the weight's power.
        assertThat(total / json.at("/books/weightPower_W").doubleValue()).isCloseTo(1, within(1e-9));
        assertThat(json.get("hangingWeight_kg").doubleValue())
                .isEqualTo(json.get("recommendedWeight_kg").doubleValue());
        assertThat(json.at("/chance/thatRun").doubleValue()).isBetween(0.5, 1.0);
        assertThat(json.at("/answers/arcs")).hasSize(9);
        assertThat(json.get("figures").findValuesAsText("name")).contains("recommended-weight", "brief.fall.height");
    }

    @Test
    void the_json_lists_every_card_of_why_once_after_its_inputs() {
        List<String> listed = new ArrayList<>();
        for (JsonNode card : sound("--json").json().get("figures")) {
            card.get("inputs").forEach(input -> assertThat(listed).contains(input.asText()));
            listed.add(card.get("name").asText());
        }
        List<String> told = sound("--why").lines().stream()
                .skip(1)
                .map(line -> line.strip().split(" ", -1)[0])
                .filter(name -> name.matches("[a-z].*"))
                .toList();

        assertThat(told).contains("chance", "free-spin", "recommended-weight");
        assertThat(listed).doesNotHaveDuplicates().containsAll(told);
    }

    @ParameterizedTest
    @CsvSource({
        "chance, /friction/teeth/low",
        "saved-one-more-leaf-1, least-weight-after",
        "saved-lighter-escape-wheel-4, escape-wheel-mass-after",
        "free-spin, wheel-inertia-1",
        "delivered, weight-power-set"
    })
    void why_tells_of_savings_chance_and_power_too(String figure, String input) {
        Run run = bench.run("rate", "@small.json", "@sound.json", "--why", figure);

        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.lines().get(0)).startsWith(figure + ": ");
        assertThat(run.out()).contains("(" + input + ")");
    }

    @Test
    void a_figure_says_where_it_comes_from_down_to_the_brief() {
        Run run = bench.run("rate", "@small.json", "@sound.json", "--why", "recommended-weight");

        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.lines().get(0)).startsWith("recommended-weight: W_r = ");
        assertThat(run.lines().get(1)).isEqualTo("  W_r = W (1 + reserve)");
        assertThat(run.out())
                .contains("reserve = 0.4 (/weight/reserve)", "M_e = (E_b + 2 A M_f) / G", "z_1 = 77 (the train)")
                .contains("(/friction/teeth/low)", "Source: ");
    }

    @Test
    void without_a_figure_all_figures_are_listed() {
        assertThat(bench.run("rate", "@small.json", "@sound.json", "--why").lines())
                .hasSizeGreaterThan(50)
                .anyMatch(line -> line.startsWith("least-weight "))
                .noneMatch(line -> line.startsWith("brief."));
    }

    @Test
    void a_heavier_weight_keeps_more_arc_and_runs_for_more_builders() {
        JsonNode usual = sound("--json").json();
        JsonNode heavy = sound("--json", "--weight", "12 kg").json();

        assertThat(heavy.get("hangingWeight_kg").doubleValue()).isEqualTo(12);
        assertThat(heavy.at("/books/semiArc_rad").doubleValue())
                .isGreaterThan(usual.at("/books/semiArc_rad").doubleValue());
        assertThat(heavy.at("/chance/thatRun").doubleValue())
                .isGreaterThanOrEqualTo(usual.at("/chance/thatRun").doubleValue());
    }

    @Test
    void an_arc_asks_for_the_weight_that_keeps_it() {
        JsonNode json = sound("--json", "--arc", "3.8 deg").json();

        assertThat(json.at("/books/semiArc_rad").doubleValue()).isGreaterThan(Math.toRadians(3.8));
        assertThat(json.get("hangingWeight_kg").doubleValue())
                .isGreaterThan(json.get("weightRunning_kg").doubleValue());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--weight| 100 g| \"100 g\" is less than the least running weight; hang at least",
                "--arc| 30 deg| \"30 deg\" is more arc than any weight keeps, which stays below",
                "--arc| 1 deg| \"1 deg\" is less than the brief asks for; ask for at least 3.5",
                "--why| least-wait| \"least-wait\" is no figure of a rating",
                "--weight| 3 m| the unit \"m\" is not known",
            })
    void what_cannot_be_is_answered_with_the_nearest_that_can(String option, String value, String sentence) {
        Run run = bench.run("rate", "@small.json", "@sound.json", option, value);

        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).contains(sentence);
    }

    @Test
    void a_weight_and_an_arc_together_are_refused() {
        assertThat(bench.run("rate", "@small.json", "@sound.json", "--weight", "9 kg", "--arc", "4 deg")
                        .err())
                .contains("leave one of them out");
    }
}
