// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.TrainReader;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.written.LayoutReader;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.train.Train;
import drumfall.ui.terminal.TerminalBench.Run;
import drumfall.ui.wording.FigureWording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places of a rated train: shown, written to a file, read back and checked. */
class LayoutFileTest {
    private static final String BOX =
            "{\"width\": \"%s\", \"height\": \"%s\", \"depth\": \"75 mm\", \"plate\": \"6 mm\", \"arrangement\": \"upright\"}";

    @TempDir
    static Path folder;

    private static TerminalBench bench;
    private static Run written;
    private static String layout;

    @BeforeAll
    static void write() throws IOException {
        bench = new TerminalBench(folder);
        bench.write("train.json", RateCommandTest.SOUND);
        bench.writeEdited("tight.json", "/frame", BOX.formatted("79 mm", "190 mm"));
        bench.writeEdited("loose.json", "/frame/arrangement", "\"unplaced\"");
        written = bench.run("rate", "@small.json", "@train.json", "--write-layout", "@layout.json");
        layout = Files.readString(folder.resolve("layout.json"));
    }

    private static Run rate(String brief, String... more) {
        String[] line = new String[3 + more.length];
        line[0] = "rate";
        line[1] = brief;
        line[2] = "@train.json";
        System.arraycopy(more, 0, line, 3, more.length);
        return bench.run(line);
    }

    private static List<String> section(Run run) {
        List<String> lines = run.lines();
        int from = lines.indexOf(Phrases.phrase("rate.places")) + 1;
        int to = lines.subList(from, lines.size()).indexOf("");
        return lines.subList(from, from + to).stream()
                .map(line -> line.strip().replaceAll("  +", "|"))
                .toList();
    }

    // Centre distances by hand, m (z1 + z2) / 2: 77 and 9, 76 and 8, 75 and 8 teeth of module 1 mm.
    @Test
    void the_places_are_a_table_of_the_arbors() {
        assertThat(written.code()).isEqualTo(ExitCode.DONE.number());
        List<String> lines = section(written);
        assertThat(lines.get(1)).startsWith("1|drum|0 mm|-43 mm|drum ").contains(", wheel ");
        assertThat(lines.get(2)).startsWith("2|centre, minute hand|0 mm|0 mm|1|43 mm|90°|pinion ");
        assertThat(lines.get(3)).startsWith("3|intermediate|0 mm|42 mm|2|42 mm|90°|pinion ");
        assertThat(lines.get(4)).startsWith("4|escape wheel|0 mm|83.5 mm|3|41.5 mm|90°|pinion ");
        assertThat(lines.get(5)).startsWith("5|pallets|0 mm|").contains("|90°|pallets ");
        assertThat(lines.get(6)).startsWith("6|minute wheel|").contains("minute wheel ", "minute pinion ");
        assertThat(lines.get(lines.size() - 3)).endsWith("directions tried every 15 degrees.");
        assertThat(lines.get(lines.size() - 2)).startsWith("So placed, ");
        assertThat(lines.get(lines.size() - 1)).contains("the swinging bob");
    }

    @Test
    void a_layout_that_was_written_is_read_without_a_conflict() {
        Run read = rate("@small.json", "--layout", "@layout.json");

        assertThat(read.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(section(read)).contains(Phrases.phrase("places.SOUND"));
        assertThat(section(read).subList(0, 8)).isEqualTo(section(written).subList(0, 8));
        JsonNode json =
                rate("@small.json", "--layout", "@layout.json", "--json").json();
        assertThat(json.get("placement").textValue()).isEqualTo("sound");
        assertThat(json.get("conflicts")).isEmpty();
    }

    /** One figure moved; amounts by hand from the places above. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            /arbors/2/y;               41.9 mm; wheel of arbor 2 and pinion of arbor 3 are 41.9 mm apart instead of 42 mm, 0.1 mm off
            /arbors/1/x;               1 um;    rod of arbor 2 is 1 µm off the place of the dial centre
            /pallets/x;                -2 mm;   pallets of arbor 5 are 2 mm off their place over escape wheel of arbor 4
            /frameCorner/x;            -30 mm;  wheel of arbor 1 stands 8.9
            /planes/escapement/to;     34 mm;   the plane of escape wheel of arbor 4 is
            /planes/depth;             150 mm;  need 150 mm of depth and the frame has 101.6
            """)
    void a_layout_in_conflict_names_the_parts_and_the_amount(String pointer, String length, String sentence) {
        Train train =
                TrainReader.read(RateCommandTest.SOUND).accepted().orElseThrow().train();
        LayoutNeed need = new TrainPlacing(new TrainRater(TerminalBench.small())).need(train);
        TrainPlaces places = TrainPlaces.read(LayoutReader.read(edited(pointer, length), need)
                .accepted()
                .orElseThrow()
                .layout(need));

        assertThat(places.code()).isEqualTo(ExitCode.DEMAND_MISSED);
        assertThat(new PlacesReport(FigureWording.in(UnitSystem.METRIC), train).lines(places))
                .anyMatch(line -> line.contains(sentence));
    }

    private static String edited(String pointer, String length) {
        ObjectNode tree = (ObjectNode) TerminalBench.json(layout);
        JsonPointer place = JsonPointer.compile(pointer);
        ((ObjectNode) tree.at(place.head())).put(place.last().getMatchingProperty(), length);
        return tree.toString();
    }

    @Test
    void the_json_keeps_every_conflict() {
        bench.write("moved.json", edited("/pallets/x", "-2 mm"));
        Run run = rate("@small.json", "--layout", "@moved.json", "--json");
        JsonNode json = run.json();

        assertThat(run.code()).isEqualTo(ExitCode.DEMAND_MISSED.number());
        assertThat(json.get("placement").textValue()).isEqualTo("unsound");
        assertThat(json.at("/conflicts/0/rule").textValue()).isEqualTo("pallet-place");
        assertThat(json.at("/conflicts/0/second").textValue()).isEqualTo("pallets of arbor 5");
        assertThat(json.at("/conflicts/0/found_mm").intValue()).isEqualTo(2);
    }

    @Test
    void a_bad_layout_is_refused_with_a_sentence_for_each_problem() {
        bench.write("bad.json", edited("/arbors/0/x", "1/3 in").replace("\"-43 mm\"", "\"-1/7 in\""));
        Run run = rate("@small.json", "--layout", "@bad.json");

        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines())
                .hasSize(2)
                .allMatch(line -> line.startsWith(bench.file("bad.json") + ": At /arbors/0/"))
                .allMatch(line -> line.endsWith("write it in mm with at most six decimals."));
    }

    /** The great wheel of 77 teeth alone is 77.9 mm over its tips: in 79 mm all stands on one vertical, 205 mm high. */
    @Test
    void a_train_without_a_place_says_what_was_nearest_to_fitting_and_writes_nothing() {
        Run run = rate("@tight.json", "--write-layout", "@nothing.json");

        assertThat(run.code()).isEqualTo(ExitCode.DEMAND_MISSED.number());
        assertThat(run.lines().subList(2, 4))
                .containsExactly("All 41 demands are met.", "Its arbors have no sound places.");
        assertThat(section(run)).hasSize(1).allMatch(line -> line.matches("No layout .* fitting: .* mm.*\\."));
        assertThat(run.err()).startsWith("The arbors have no place, so no layout was written to ");
        assertThat(folder.resolve("nothing.json")).doesNotExist();
    }

    @Test
    void a_brief_that_leaves_arbors_unplaced_still_has_layouts_checked() {
        assertThat(section(rate("@loose.json"))).containsExactly(Phrases.phrase("places.LEFT_UNPLACED"));
        assertThat(section(rate("@loose.json", "--layout", "@layout.json"))).contains(Phrases.phrase("places.SOUND"));
    }
}
