// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.BriefChange;
import drumfall.solver.brief.TrainReader;
import drumfall.solver.brief.TrainSheet;
import drumfall.solver.explain.Standing;
import drumfall.solver.explain.TrainNotation;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.TrainSearch;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import drumfall.ui.terminal.TerminalBench.Run;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WhyCommandTest {
    private static final String TOO_LONG = "{\"atLeast\": \"8 d\", \"wanted\": \"8 d\", \"atMost\": \"9 d\"}";

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
        writeNarrow("long.json", TOO_LONG);
    }

    /** The small brief with fewer wheels to choose from, of which every clash and every nearest value is searched. */
    private void writeNarrow(String name, String run) {
        ObjectNode brief = (ObjectNode) TerminalBench.json(TerminalBench.smallText());
        brief.set("run", TerminalBench.json(run));
        ((ObjectNode) brief.at("/teeth/wheelTeeth")).put("from", 75).put("to", 77);
        bench.write(name, brief.toPrettyString());
    }

    /** A train as a maker types it. */
    static String line(Train train) {
        return "%s drum %s falls %d"
                .formatted(
                        train,
                        TrainSheet.of("", train).drumDiameter().text(),
                        train.reeving().falls());
    }

    /** A train of the small brief that an option beats: an option with one pinion or wheel changed. */
    static Train beaten(List<Rating> front) {
        TrainRater rater = new TrainRater(TerminalBench.small());
        return front.stream()
                .flatMap(rating -> neighbours(rating.train()))
                .filter(train -> Standing.of(rater.rate(train), front).place() == Standing.Place.BEATEN)
                .findFirst()
                .orElseThrow();
    }

    private static Stream<Train> neighbours(Train train) {
        return IntStream.range(0, train.meshes().size())
                .boxed()
                .flatMap(i -> Stream.of(-2, -1, 1, 2).map(more -> {
                    List<Mesh> meshes = new ArrayList<>(train.meshes());
                    Mesh mesh = meshes.get(i);
                    meshes.set(i, Mesh.of(mesh.toothCount() + more, mesh.leafCount(), mesh.module()));
                    return new Train(
                            meshes, train.meshesAbove(), train.drumDiameter(), train.reeving(), train.escapeTeeth());
                }));
    }

    @Test
    void a_brief_without_trains_is_told_its_clashes_and_what_alone_would_help() {
        Run run = bench.run("why", "@long.json");

        assertThat(run.code()).isEqualTo(ExitCode.NO_TRAIN.number());
        assertThat(run.err()).isEmpty();
        assertThat(run.lines().get(0)).isEqualTo("Small bench clock: no train exists");
        assertThat(run.out())
                .contains(
                        "Clash 1\n",
                        "  the clock runs at least 8 d (/run/atLeast)\n",
                        "Changing one figure alone, all else kept",
                        "  shortest duration: ",
                        " instead of 8 d  (");
    }

    /** The value named is tried in the search itself, and so is the one a step tighter: a hundredth of a day more. */
    @Test
    void the_nearest_value_is_what_the_search_finds() {
        JsonNode json = bench.run("why", "@long.json", "--json").json();

        assertThat(json.get("outcome").textValue()).isEqualTo("no-train");
        assertThat(json.get("complete").booleanValue()).isTrue();
        JsonNode run = found(json, "/run/atLeast");
        assertThat(run.get("verdict").textValue()).isEqualTo("nearest");
        double days = Double.parseDouble(run.get("value").textValue().replace(" d", ""));
        writeNarrow("at.json", TOO_LONG.replace("\"8 d\", \"w", "\"" + days + " d\", \"w"));
        writeNarrow("tighter.json", TOO_LONG.replace("\"8 d\", \"w", "\"%.2f d\", \"w".formatted(days + 0.01)));
        assertThat(bench.run("solve", "@at.json").code()).isEqualTo(ExitCode.DONE.number());
        assertThat(bench.run("solve", "@tighter.json").code()).isEqualTo(ExitCode.NO_TRAIN.number());
    }

    private static JsonNode found(JsonNode json, String pointer) {
        return IntStream.range(0, json.get("nearest").size())
                .mapToObj(json.get("nearest")::get)
                .filter(entry -> entry.get("pointer").textValue().equals(pointer))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_brief_with_trains_has_nothing_to_explain() {
        Run run = bench.run("why", "@small.json");
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.lines())
                .containsExactly(
                        "Small bench clock: trains exist, nothing clashes; see drumfall solve, or ask with --train or --cost");
    }

    @Test
    void an_explanation_that_is_cut_short_says_so() {
        Run run = bench.run("why", "@long.json", "--limit", "0 s");
        assertThat(run.code()).isEqualTo(ExitCode.STOPPED.number());
        assertThat(run.lines())
                .containsExactly("Small bench clock: stopped before it was known whether a train exists");
    }

    @Test
    void an_option_of_the_front_is_known_again_by_line_and_by_file() {
        Train second = front.get(1).train();
        bench.write("second.json", TrainReader.write(TrainSheet.of("Second", second)));
        for (String train : List.of(line(second), "@second.json")) {
            Run run = bench.run("why", "@small.json", "--train", train);
            assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
            assertThat(run.lines().get(1)).isEqualTo("It is option 2 of the front.");
        }
    }

    @Test
    void a_beaten_train_is_told_by_which_options_and_by_how_much() {
        Train beaten = beaten(front);
        Standing standing = Standing.of(new TrainRater(TerminalBench.small()).rate(beaten), front);

        Run run = bench.run("why", "@small.json", "--train", line(beaten));

        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.out())
                .contains(
                        "Options that beat it: %d, at least as good in everything and better in:"
                                .formatted(standing.options().size()),
                        "Option %d: %s"
                                .formatted(
                                        standing.options().get(0),
                                        front.get(standing.options().get(0) - 1).train()))
                .containsPattern(
                        "  [a-z ]+: [0-9.]+ (kg|g|mm) instead of [0-9.]+ (kg|g|mm), [0-9.]+ (kg|g|mm|µm) less");
    }

    @Test
    void a_train_that_misses_demands_is_told_figure_and_limit() {
        Run run = bench.run(
                "why", "@small.json", "--train", line(front.get(0).train()).replace("E30", "E60"));
        assertThat(run.code()).isEqualTo(ExitCode.DEMAND_MISSED.number());
        assertThat(run.lines().get(1)).matches("It misses [0-9]+ of [0-9]+ demands:");
        assertThat(run.lines()).anyMatch(row -> row.matches("  teeth of the escape wheel +60 .*30"));
    }

    @Test
    void a_train_that_an_unfinished_front_does_not_beat_is_told_so() {
        Run run = bench.run(
                "why",
                "@small.json",
                "--limit",
                "0 s",
                "--train",
                line(front.get(0).train()));
        assertThat(run.code()).isEqualTo(ExitCode.STOPPED.number());
        assertThat(run.out()).contains("nothing found so far beats it");
    }

    @Test
    void costs_are_listed_by_what_they_would_buy_and_what_they_would_buy_is_there() {
        JsonNode json = bench.run("why", "@small.json", "--cost", "--option", "2", "--json")
                .json();

        Rating chosen = front.get(1);
        assertThat(json.get("text").textValue()).isEqualTo(chosen.train().toString());
        assertThat(json.get("complete").booleanValue()).isTrue();
        JsonNode most = json.get("costs").get(0);
        assertThat(most.get("gain_kg").doubleValue()).isPositive();
        assertThat(IntStream.range(0, json.get("costs").size())
                        .mapToObj(i -> -json.get("costs").get(i).get("gain_kg").doubleValue()))
                .isSorted();
        assertThat(chosen.recommendedWeight() - most.get("recommendedWeight_kg").doubleValue())
                .isEqualTo(most.get("gain_kg").doubleValue());
        String value = most.get("value").textValue();
        String pointer = most.get("pointer").textValue();
        var changed = value.matches("[0-9]+")
                ? BriefChange.of(TerminalBench.small(), pointer, Integer.parseInt(value))
                : BriefChange.of(TerminalBench.small(), pointer, value);
        var trains = TrainSearch.run(changed.accepted().orElseThrow(), SearchListener.SILENT, () -> false)
                .front();
        assertThat(trains)
                .anyMatch(rating ->
                        rating.train().toString().equals(most.get("train").textValue()));
    }

    @Test
    void costs_are_told_to_people_in_one_line_each() {
        Run run = bench.run("why", "@small.json", "--cost");
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.lines().get(0))
                .isEqualTo("Small bench clock: what each demand costs option 1 in weight, everything else no worse");
        assertThat(run.lines().subList(2, run.lines().size()))
                .isNotEmpty()
                .allMatch(row -> row.matches("  [a-z ,]+ [0-9.]+.* instead of .*: .*"));
    }

    @Test
    void costs_of_a_brief_without_trains_are_not_told() {
        Run run = bench.run("why", "@long.json", "--cost");
        assertThat(run.code()).isEqualTo(ExitCode.NO_TRAIN.number());
        assertThat(run.err()).contains("no train exists");
    }

    @Test
    void the_line_of_a_train_is_read_back() {
        assertThat(TrainNotation.read(line(front.get(0).train())).accepted().map(TrainSheet::train))
                .contains(front.get(0).train());
    }
}
