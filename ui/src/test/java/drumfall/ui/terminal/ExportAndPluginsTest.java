// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.ui.terminal.TerminalBench.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ExportAndPluginsTest {
    @TempDir
    Path folder;

    private TerminalBench bench;

    @BeforeEach
    void open() throws IOException {
        LineExporter.jar(folder.resolve("plugins/line.jar"));
        bench = new TerminalBench(folder).plugins(folder.resolve("plugins"));
    }

    @Test
    void loaded_plugins_are_listed_with_version_and_file() {
        Run run = bench.run("plugins");
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.out())
                .contains(folder.resolve("plugins") + " (the user's own)")
                .contains("line  One line", "2.5", bench.file("plugins/line.jar"));
    }

    @Test
    void a_plugin_at_fault_is_named_and_told_by_the_exit_code() throws IOException {
        Files.writeString(folder.resolve("plugins/broken.jar"), "no jar");
        Run run = bench.run("plugins");
        assertThat(run.code()).isEqualTo(ExitCode.EXPORT_FAILED.number());
        assertThat(run.out()).contains("line  One line", "At fault: ", "broken.jar");
    }

    @Test
    void a_folder_without_plugins_is_no_fault() {
        Run run = bench.plugins(folder.resolve("nowhere")).run("plugins");
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.out()).contains("No exporter is loaded.");
    }

    @Test
    void the_option_asked_for_is_exported() throws IOException {
        String second = bench.run("solve", "@small.json", "--json")
                .json()
                .at("/options/1/text")
                .textValue();
        Run run = bench.run("export", "--with", "line", "--to", "@out", "@small.json", "--option", "2");
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.out()).contains(second + " was exported to ", "train.txt");
        assertThat(folder.resolve("out/line/train.txt")).hasContent(second);
    }

    @Test
    void a_train_of_a_file_is_exported_though_it_misses_demands() {
        bench.write("train.json", """
                {"format": "drumfall-train", "version": 1, "name": "Slow", "meshesAbove": 1, "falls": 1,
                 "meshes": [{"wheel": 30, "leaves": 8, "module": "1 mm"}, {"wheel": 70, "leaves": 8, "module": "1 mm"}],
                 "drumDiameter": "30 mm", "escapeTeeth": 30}
                """);
        Run run = bench.run("export", "--with", "line", "--to", "@out", "@small.json", "@train.json");
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.err()).startsWith("Demands that this train misses: ");
        assertThat(folder.resolve("out/line/train.txt")).hasContent("30/8 m1 | 70/8 m1 · E30");
    }

    /** The record's jar is there once the whole project has been packaged. */
    @Test
    void an_exported_train_is_given_back_and_rated_as_before() {
        Path record = Path.of("..", "plugins", "record", "target", "plugin");
        assumeThat(record).as("the record is packaged").isDirectory();
        bench.write("sound.json", RateCommandTest.SOUND);

        Run export = bench.plugins(record)
                .run("export", "--with", "train-record", "--to", "@out", "@small.json", "@sound.json");

        assertThat(export.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(rated("@out/train-record/train-to-rate.json")).isEqualTo(rated("@sound.json"));
    }

    /** All that is said of a train but what it is called. */
    private JsonNode rated(String train) {
        Run run = bench.run("rate", "@small.json", train, "--json");
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        JsonNode json = run.json();
        assertThat(((ObjectNode) json.get("train")).remove("name").textValue()).isNotEmpty();
        return json;
    }

    @Test
    void an_exporter_that_is_not_there_fails_the_export() {
        Run run = bench.run("export", "--with", "solid", "--to", "@out", "@small.json");
        assertThat(run.code()).isEqualTo(ExitCode.EXPORT_FAILED.number());
        assertThat(run.err()).contains("solid", "line");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void all_exporters_write_into_one_zip_file() {
        Run run = bench.run("export", "--all", "--to", "@clock.zip", "@small.json");
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(run.out()).contains(" was exported to " + folder.resolve("clock.zip"), "line/train.txt");
        assertThat(folder.resolve("clock.zip")).isRegularFile();
    }

    @Test
    void where_a_plugin_is_at_fault_the_others_export_and_the_exit_code_says_so() throws IOException {
        Files.writeString(folder.resolve("plugins/broken.jar"), "no jar");
        Run run = bench.run("export", "--all", "--to", "@out", "@small.json");
        assertThat(run.code()).isEqualTo(ExitCode.EXPORT_FAILED.number());
        assertThat(run.err()).contains("At fault: ", "broken.jar");
        assertThat(folder.resolve("out/all_exports/line/train.txt")).exists();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "--with=line --all"})
    void one_exporter_is_asked_for_or_all_of_them(String asked) {
        String[] words = ("export --to @out @small.json " + asked).strip().split(" ", -1);
        Run run = bench.run(words);
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertThat(run.err()).contains("--with", "--all");
    }

    @Test
    void a_stopped_search_has_no_option_to_export() {
        Run run = bench.run("export", "--with", "line", "--to", "@out", "@small.json", "--limit", "0 s");
        assertThat(run.code()).isEqualTo(ExitCode.STOPPED.number());
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void a_brief_without_trains_has_nothing_to_export() {
        Run run = bench.run(
                "export",
                "--with",
                "line",
                "--to",
                "@out",
                "@small.json",
                "--hold=below-1.wheel=68",
                "--hold=below-2.wheel=68");
        assertThat(run.code()).isEqualTo(ExitCode.NO_TRAIN.number());
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void settings_are_listed_with_what_they_may_be() {
        assertThat(bench.run("plugins").out())
                .contains("export --set EXPORTER.SETTING=VALUE", "line.copies", "a whole number from 1 to 9")
                .contains("How often the line is written.");
    }

    @Test
    void a_setting_reaches_the_exporter_and_the_list_of_files() throws IOException {
        Run run = bench.run("export", "--with", "line", "--to", "@out", "@small.json", "--set", "line.copies=2");
        assertThat(run.code()).isEqualTo(ExitCode.DONE.number());
        assertThat(Files.readAllLines(folder.resolve("out/line/train.txt"))).hasSize(2);
        assertThat(Files.readString(folder.resolve("out/line/files.sha256"))).startsWith("# line.copies=2\n");
        bench.run("export", "--all", "--to", "@out", "@small.json", "--set", "line.copies=3");
        assertThat(Files.readAllLines(folder.resolve("out/all_exports/line/train.txt")))
                .hasSize(3);
    }

    /** Told before the brief is searched: the search would be stopped at once, and the exit code say so. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --with line --set line.copies=0                      | 2 | The setting line.copies cannot be "0"
            --with line --set line.copys=2                       | 2 | no setting "copys"; it has: copies
            --with line --set copies=2                           | 2 | EXPORTER.SETTING=VALUE
            --with line --set line.copies                        | 2 | EXPORTER.SETTING=VALUE
            --with line --set line.copies=2 --set line.copies=3  | 2 | is given twice
            --with line --set solid.edge=2                       | 4 | There is no exporter "solid"
            --all --set solid.edge=2                             | 4 | There is no exporter "solid"
            """)
    void a_setting_that_cannot_be_is_one_sentence(String words, int code, String told) {
        Run run = bench.run(("export --to @out @small.json --limit 0s " + words).split(" +", -1));
        assertThat(run.code()).isEqualTo(code);
        assertThat(run.err().lines().filter(line -> line.contains(told))).hasSize(1);
        assertThat(folder.resolve("out")).doesNotExist();
    }
}
