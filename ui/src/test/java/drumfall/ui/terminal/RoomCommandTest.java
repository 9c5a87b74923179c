// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.TrainReader;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.LeastRooms;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.TrainSearch;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import drumfall.ui.terminal.TerminalBench.Run;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Commands on a brief that wants the movement small. */
class RoomCommandTest {
    /** Every height within the frame is enough, so that one search settles it. */
    static final String ONE_ROUND =
            "{\"figure\": \"movement-height\", \"resolution\": \"10 mm\", \"enough\": \"400 mm\"}";

    private static final String SEVERAL_ROUNDS = "{\"figure\": \"movement-height\", \"resolution\": \"4 mm\"}";

    @TempDir
    static Path folder;

    private static TerminalBench bench;
    private static Brief brief;
    private static List<Rating> front;
    private static Run table;
    private static JsonNode json;

    @BeforeAll
    static void solve() throws IOException {
        bench = new TerminalBench(folder);
        bench.writeEdited("one.json", "/frame/least", ONE_ROUND);
        bench.writeEdited("several.json", "/frame/least", SEVERAL_ROUNDS);
        LineExporter.jar(folder.resolve("plugins/line.jar"));
        bench.plugins(folder.resolve("plugins"));
        brief = read(SEVERAL_ROUNDS);
        front = TrainSearch.run(brief, SearchListener.SILENT, () -> false).front();
        table = bench.run("solve", "@several.json");
        json = bench.run("solve", "@several.json", "--json").json();
    }

    private static Brief read(String least) {
        ObjectNode tree = (ObjectNode) TerminalBench.json(TerminalBench.smallText());
        ((ObjectNode) tree.get("frame")).set("least", TerminalBench.json(least));
        return BriefReader.read(tree).accepted().orElseThrow();
    }

    private static long last(List<Long> numbers) {
        return numbers.get(numbers.size() - 1);
    }

    @Test
    void more_than_one_size_is_listed_only_where_sizes_count() {
        assertThat(front).extracting(rating -> last(rating.cell().numbers())).hasSizeGreaterThan(1);
        assertThat(front.stream()
                        .map(rating -> last(rating.cell().numbers()))
                        .distinct()
                        .count())
                .isGreaterThan(1);
        int plain = bench.run("solve", "@small.json", "--json")
                .json()
                .get("options")
                .size();
        assertThat(bench.run("solve", "@one.json", "--json").json().get("options"))
                .hasSize(plain);
        assertThat(front).hasSizeGreaterThan(plain);
    }

    /** The layout shown has the height by which its train is listed: rounded up to steps of 4 mm. */
    @Test
    void each_train_is_shown_with_the_least_height_it_takes() {
        assertThat(json.get("options")).hasSameSizeAs(front);
        for (int i = 0; i < front.size(); i++) {
            JsonNode option = json.get("options").get(i);
            double shown = option.at("/places/height_mm").doubleValue();
            long steps = last(front.get(i).cell().numbers());
            assertThat(option.get("text").textValue())
                    .isEqualTo(front.get(i).train().toString());
            assertThat(Math.ceil(shown / 4)).isEqualTo((double) steps);
            assertThat(option.at("/leastRoom/figure").textValue()).isEqualTo("movement-height");
            assertThat(option.at("/leastRoom/size_SI").doubleValue()).isEqualTo(steps * 4 / 1000.0);
            assertThat(option.at("/leastRoom/resolution_SI").doubleValue()).isEqualTo(0.004);
            assertThat(option.at("/leastRoom/enough_SI").isNull()).isTrue();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "movement-width, 10 mm, /places/width_mm, 1000",
        "movement-depth, 2 mm, /places/depth_mm, 1000",
        "plate-area, 10 cm2, /places/plateArea_m2, 1",
    })
    void whichever_size_counts_is_the_one_of_the_layout_shown(
            String figure, String resolution, String field, double perMetre) {
        bench.writeEdited(
                figure + ".json",
                "/frame/least",
                "{\"figure\": \"%s\", \"resolution\": \"%s\"}".formatted(figure, resolution));
        JsonNode options =
                bench.run("solve", "@" + figure + ".json", "--json").json().get("options");
        assertThat(options).isNotEmpty().allSatisfy(option -> {
            double shown = option.at(field).doubleValue() / perMetre;
            double step = option.at("/leastRoom/resolution_SI").doubleValue();
            double listed = option.at("/leastRoom/size_SI").doubleValue();
            assertThat(listed).isGreaterThanOrEqualTo(shown).isLessThan(shown + step);
        });
    }

    /** Width, height and depth stand in one column, which hides the area. */
    @ParameterizedTest
    @CsvSource({"movement-width, 10 mm, 400 mm, false", "plate-area, 10 cm2, 2000 cm2, true"})
    void the_plate_alone_has_a_column_of_its_own(String figure, String resolution, String enough, boolean column) {
        bench.writeEdited(
                "column.json",
                "/frame/least",
                "{\"figure\": \"%s\", \"resolution\": \"%s\", \"enough\": \"%s\"}"
                        .formatted(figure, resolution, enough));
        assertThat(bench.run("solve", "@column.json").lines().get(2).endsWith("plate"))
                .isEqualTo(column);
    }

    @Test
    void what_is_small_enough_is_as_good_as_anything_smaller() {
        JsonNode options = bench.run("solve", "@one.json", "--json").json().get("options");
        assertThat(options).isNotEmpty().allSatisfy(option -> {
            assertThat(option.at("/leastRoom/size_SI").doubleValue()).isEqualTo(0.4);
            assertThat(option.at("/leastRoom/enough_SI").doubleValue()).isEqualTo(0.4);
        });
    }

    private static String oneLine(Run run) {
        return String.join(" ", run.lines());
    }

    @Test
    void the_notes_say_what_is_wanted_small_and_in_which_steps() {
        assertThat(oneLine(table))
                .contains("The brief wants the movement height small (/frame/least): each train is placed where that is"
                        + " the least it takes on the grid, and is told apart by it in steps of 4 mm.")
                .doesNotContain("not the least that another layout might take");
        assertThat(oneLine(bench.run("solve", "@one.json")))
                .contains("in steps of 10 mm; 400 mm or less is small enough.");
        assertThat(oneLine(bench.run("solve", "@small.json")))
                .contains("not the least that another layout might take")
                .doesNotContain("/frame/least");
    }

    @ParameterizedTest
    @CsvSource({
        "movement-height, has the least height",
        "movement-width, has the least width",
        "movement-depth, has the least depth",
        "plate-area, has the smallest plate",
    })
    void a_rated_train_is_placed_in_least_room_and_told_so(String figure, String words) {
        String resolution = figure.equals("plate-area") ? "10 cm2" : "10 mm";
        bench.writeEdited(
                "rated.json",
                "/frame/least",
                "{\"figure\": \"%s\", \"resolution\": \"%s\"}".formatted(figure, resolution));
        bench.write("train.json", RateCommandTest.SOUND);
        Run run = bench.run("rate", "@rated.json", "@train.json");
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.out()).contains("Of the layouts on that grid this one " + words);
    }

    @Test
    void every_option_is_known_again() {
        for (int i = 0; i < front.size(); i++) {
            Run run = why("@several.json", front.get(i).train());
            assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
            assertThat(run.lines().get(1)).isEqualTo("It is option %d of the front.".formatted(i + 1));
        }
    }

    private static Run why(String file, Train train, String... more) {
        return bench.run(Stream.concat(Stream.of("why", file, "--train", WhyCommandTest.line(train)), Stream.of(more))
                .toArray(String[]::new));
    }

    /** A train with one or two of an option's counts changed that meets every demand and takes a step more than an option. */
    private static Rating beatenInRoom() {
        TrainRater rater = new TrainRater(brief);
        return front.stream()
                .flatMap(rating -> neighbours(rating.train()))
                .flatMap(RoomCommandTest::neighbours)
                .distinct()
                .map(rater::rate)
                .filter(Rating::feasible)
                .map(rating -> LeastRooms.roomed(rater, rating, () -> false))
                .filter(rating -> front.stream().anyMatch(option -> beatsInRoom(option, rating)))
                .findFirst()
                .orElseThrow();
    }

    private static boolean beatsInRoom(Rating option, Rating rating) {
        return option.cell().numbers().size() == rating.cell().numbers().size()
                && option.cell().dominates(rating.cell())
                && last(option.cell().numbers()) < last(rating.cell().numbers());
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
    void a_train_that_takes_more_room_is_told_so_with_both_figures() {
        Rating beaten = beatenInRoom();
        int number = 1
                + IntStream.range(0, front.size())
                        .filter(i -> beatsInRoom(front.get(i), beaten))
                        .findFirst()
                        .orElseThrow();
        long own = 4 * last(beaten.cell().numbers());
        long less = 4 * last(front.get(number - 1).cell().numbers());

        Run run = why("@several.json", beaten.train());
        JsonNode answer = why("@several.json", beaten.train(), "--json").json();

        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.out())
                .contains("Option %d: ".formatted(number))
                .contains("  movement height, in steps of 4 mm: %d mm instead of %d mm\n".formatted(less, own));
        assertThat(answer.get("outcome").textValue()).isEqualTo("beaten");
        JsonNode option = IntStream.range(0, answer.get("options").size())
                .mapToObj(answer.get("options")::get)
                .filter(entry -> entry.get("option").intValue() == number)
                .findFirst()
                .orElseThrow();
        JsonNode difference =
                option.get("differences").get(option.get("differences").size() - 1);
        assertThat(difference.get("figure").textValue()).isEqualTo("movement-height");
        assertThat(difference.get("own_SI").doubleValue()).isEqualTo(own / 1000.0);
        assertThat(difference.get("option_SI").doubleValue()).isEqualTo(less / 1000.0);
    }

    /** In 79 mm the great wheel of 77 teeth leaves no room beside it, so that all would stand 205 mm high. */
    @Test
    void a_train_without_a_place_is_told_so() {
        ObjectNode tree = (ObjectNode) TerminalBench.json(TerminalBench.smallText());
        ObjectNode frame = (ObjectNode) tree.get("frame");
        frame.put("width", "79 mm").put("height", "190 mm").set("least", TerminalBench.json(SEVERAL_ROUNDS));
        ((ObjectNode) tree.at("/teeth/wheelTeeth")).put("from", 75).put("to", 77);
        bench.write("tight.json", tree.toPrettyString());
        Train train =
                TrainReader.read(RateCommandTest.SOUND).accepted().orElseThrow().train();

        Run run = why("@tight.json", train);

        assertThat(run.code()).isEqualTo(ExitCode.DEMAND_MISSED.number());
        assertThat(run.out()).contains("but its arbors have no places within frame and gaps");
    }

    @Test
    void an_interruption_before_the_room_is_known_is_told_and_nothing_else() {
        Run run = bench.runInterrupted(
                "why",
                "@several.json",
                "--train",
                WhyCommandTest.line(front.get(0).train()));
        assertThat(run.code()).isEqualTo(ExitCode.STOPPED.number());
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("Stopped before it was known how much room the train takes");
    }

    /** The limit is the search's: what is typed is placed all the same. */
    @Test
    void a_search_that_is_cut_short_leaves_a_train_unbeaten_so_far() {
        Run run = why("@several.json", front.get(0).train(), "--limit", "0 s");
        assertThat(run.code()).isEqualTo(ExitCode.STOPPED.number());
        assertThat(run.out()).contains("nothing found so far beats it");
    }

    @Test
    void the_option_asked_for_is_exported() {
        int number = front.size();
        Run run = bench.run(
                "export", "--with", "line", "--to", "@out", "@several.json", "--option", String.valueOf(number));
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(folder.resolve("out/line/train.txt"))
                .hasContent(front.get(number - 1).train().toString());
    }

    @Test
    void what_demands_cost_counts_no_train_that_takes_more_room() {
        Run run = bench.run("why", "@several.json", "--cost", "--limit", "1 min");
        assertThat(run.out())
                .contains(
                        "The brief wants the movement height small: trains that take more of it than this option do not count");
    }
}
