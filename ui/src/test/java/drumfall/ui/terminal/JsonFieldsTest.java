// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.TrainReader;
import drumfall.solver.brief.TrainSheet;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.TrainSearch;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Documented are the fields that are written, and none besides. */
class JsonFieldsTest {
    /** Every figure that a brief may want small, so that every field of the objectives is written. */
    private static final String EVERY_OBJECTIVE = """
            [{"figure": "recommended-weight", "resolution": "5 %"}, {"figure": "filament-mass", "resolution": "50 g"},
             {"figure": "largest-wheel", "resolution": "20 mm"}, {"figure": "centre-distances", "resolution": "50 mm"},
             {"figure": "meshes"}, {"figure": "modules"}, {"figure": "duration-error", "resolution": "12 h"}]
            """;

    @TempDir
    Path folder;

    private TerminalBench bench;

    @BeforeEach
    void open() {
        bench = new TerminalBench(folder);
        bench.writeEdited("every.json", "/objectives", EVERY_OBJECTIVE);
        ObjectNode none = (ObjectNode) TerminalBench.json(TerminalBench.smallText());
        none.putObject("run").put("atLeast", "20 d").put("wanted", "21 d").put("atMost", "22 d");
        bench.write("none.json", none.toPrettyString());
    }

    @Test
    void fields_of_a_front() {
        Set<String> written = fields(bench.run("solve", "@every.json", "--json").json());
        written.addAll(fields(bench.run("solve", "@none.json", "--json").json()));
        bench.writeEdited("room.json", "/frame/least", RoomCommandTest.ONE_ROUND);
        written.addAll(fields(
                bench.run("solve", "@room.json", "--json", "--hold", "falls=1").json()));
        written.remove("options[]");
        assertThat(written).containsExactlyElementsOf(FieldsCommand.fields("solve"));
    }

    @Test
    void fields_of_a_rating() {
        var front = TrainSearch.run(TerminalBench.small(), SearchListener.SILENT, () -> false)
                .front();
        bench.write(
                "train.json",
                TrainReader.write(TrainSheet.of("First", front.get(0).train())));
        Set<String> written =
                fields(bench.run("rate", "@every.json", "@train.json", "--json").json());
        bench.writeEdited("tight.json", "/frame/width", "\"1 mm\"");
        written.addAll(
                fields(bench.run("rate", "@tight.json", "@train.json", "--json").json()));
        assertThat(written).containsExactlyElementsOf(FieldsCommand.fields("rate"));
    }

    @Test
    void fields_of_a_layout_file() throws IOException {
        bench.write("train.json", RateCommandTest.SOUND);
        bench.run("rate", "@small.json", "@train.json", "--write-layout", "@layout.json");
        Set<String> written = fields(TerminalBench.json(Files.readString(folder.resolve("layout.json"))));
        assertThat(written).containsExactlyElementsOf(FieldsCommand.fields("layout"));
    }

    @Test
    void fields_of_answers_to_why() {
        var front = TrainSearch.run(TerminalBench.small(), SearchListener.SILENT, () -> false)
                .front();
        String best = WhyCommandTest.line(front.get(0).train());
        Set<String> written = fields(
                bench.run("why", "@none.json", "--json", "--hold", "falls=1").json());
        written.addAll(
                fields(bench.run("why", "@small.json", "--cost", "--json").json()));
        written.addAll(fields(bench.run("why", "@small.json", "--json", "--train", best.replaceFirst("E30", "E60"))
                .json()));
        written.addAll(fields(
                bench.run("why", "@small.json", "--json", "--train", WhyCommandTest.line(WhyCommandTest.beaten(front)))
                        .json()));
        assertThat(written).containsExactlyElementsOf(FieldsCommand.fields("why"));
    }

    @Test
    void fields_of_ratios() {
        Set<String> written =
                fields(bench.run("ratio", "60", "--wheels", "60-64", "--json").json());
        assertThat(written).containsExactlyElementsOf(FieldsCommand.fields("ratio"));
    }

    @Test
    void fields_of_a_mesh() {
        Set<String> written = fields(bench.run("mesh", "60", "8", "--json").json());
        assertThat(written).containsExactlyElementsOf(FieldsCommand.fields("mesh"));
    }

    @Test
    void fields_of_displays() {
        Set<String> written =
                fields(bench.run("display", "moon", "--show", "1", "--json").json());
        assertThat(written).containsExactlyElementsOf(FieldsCommand.fields("display"));
    }

    @Test
    void fields_of_a_pendulum() {
        bench.write("arcs.csv", PendulumCommandTest.ringDown());
        String[] line = (PendulumCommandTest.EVERYTHING + " --ring-down @arcs.csv --json").split(" ", -1);
        Set<String> written = fields(bench.run(line).json());
        assertThat(written).containsExactlyElementsOf(FieldsCommand.fields("pendulum"));
    }

    @Test
    void fields_of_plugins() throws IOException {
        LineExporter.jar(folder.resolve("plugins/line.jar"));
        Files.writeString(folder.resolve("plugins/broken.jar"), "no jar");
        bench.plugins(folder.resolve("plugins"));
        Set<String> written = fields(bench.run("plugins", "--json").json());
        written.removeIf(field -> field.endsWith("exporters[]") || field.endsWith("faults[]"));
        assertThat(written).containsExactlyElementsOf(FieldsCommand.fields("plugins"));
    }

    @Test
    void the_documented_fields_are_printed_with_their_meaning() {
        assertThat(bench.run("fields", "solve").out())
                .contains("options[].recommendedWeight_kg", "least running weight with its reserve")
                .doesNotContain("''");
    }

    /** Paths of all leaves; a train within is a document of its own. */
    private static Set<String> fields(JsonNode document) {
        Set<String> paths = new TreeSet<>();
        collect(document, "", paths);
        return paths;
    }

    private static void collect(JsonNode node, String path, Set<String> paths) {
        if (node.isObject() && !path.equals("train") && !path.endsWith(".train")) {
            node.properties()
                    .forEach(field -> collect(
                            field.getValue(), path.isEmpty() ? field.getKey() : path + "." + field.getKey(), paths));
        } else if (node.isArray() && !node.isEmpty()) {
            node.forEach(entry -> collect(entry, path + "[]", paths));
        } else if (!node.isArray()) {
            paths.add(path);
        }
    }
}
