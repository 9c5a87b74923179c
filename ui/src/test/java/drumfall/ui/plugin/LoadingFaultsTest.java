// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.plugin.api.ApiVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each way in which a jar can fail to load is named, and the jar beside it loads all the same. */
class LoadingFaultsTest {
    private static final String NOTHING = "";
    private static final String FINE = "return \"odd\";";

    @TempDir
    Path folder;

    private HostBench bench;

    @BeforeEach
    void setUp() {
        bench = new HostBench(folder);
        bench.plugin()
                .exporter("Good", "good", "write(folder, \"a.txt\", \"a\");")
                .jar(bench.plugins.resolve("z-good.jar"));
    }

    private Path oddJar() {
        return bench.plugins.resolve("odd.jar");
    }

    private PluginFault onlyFault(PluginLimits limits) {
        try (PluginHost host = bench.load(limits)) {
            assertThat(host.exporters()).extracting(ExporterEntry::id).containsExactly("good");
            LoadedPlugin odd = host.report().get(0);
            assertThat(odd.file().getFileName()).hasToString("odd.jar");
            assertThat(odd.faults()).hasSize(1);
            PluginFault fault = odd.faults().get(0);
            HostBench.assertIsOneSentence(fault);
            assertThat(fault.plugin()).isEqualTo("odd.jar");
            assertThat(fault.sentence()).contains("odd.jar");
            return fault;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "This is no archive.", "PK\u0003\u0004 but no more"})
    void a_file_that_is_no_jar(String text) throws IOException {
        Files.writeString(oddJar(), text);
        assertThat(onlyFault(HostBench.LONG).kind()).isEqualTo(FaultKind.NOT_A_JAR);
    }

    @Test
    void a_jar_cut_short() throws IOException {
        bench.plugin().exporter("Odd", "odd", NOTHING).jar(oddJar());
        byte[] whole = Files.readAllBytes(oddJar());
        Files.write(oddJar(), java.util.Arrays.copyOf(whole, whole.length / 2));
        assertThat(onlyFault(HostBench.LONG).kind()).isEqualTo(FaultKind.NOT_A_JAR);
    }

    @Test
    void a_folder_named_like_a_jar() throws IOException {
        Files.createDirectories(oddJar());
        assertThat(onlyFault(HostBench.LONG).kind()).isEqualTo(FaultKind.NOT_A_JAR);
    }

    @Test
    void a_link_that_leads_nowhere() throws IOException {
        Files.createSymbolicLink(oddJar(), bench.work.resolve("gone.jar"));
        assertThat(onlyFault(HostBench.LONG).kind()).isEqualTo(FaultKind.NOT_A_JAR);
    }

    @Test
    void a_jar_without_a_service_entry() {
        bench.plugin()
                .source("stranger.Plain", "package stranger; public class Plain {}")
                .jar(oddJar());
        assertThat(onlyFault(HostBench.LONG).kind()).isEqualTo(FaultKind.NO_EXPORTER);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "one", "0.1", "1.0.0"})
    void a_jar_that_states_no_readable_api_version(String stated) {
        bench.plugin()
                .exporter("Odd", "odd", NOTHING)
                .attribute("Drumfall-Api", stated)
                .jar(oddJar());
        PluginFault fault = onlyFault(HostBench.LONG);
        assertThat(fault.kind()).isEqualTo(FaultKind.NO_API_VERSION);
        assertThat(fault.sentence()).contains("\"" + stated + "\"").contains("Drumfall-Api: " + ApiVersion.CURRENT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.2", "2.0", "99.99"})
    void a_jar_that_asks_for_a_newer_api_is_refused_before_its_code_runs(String asked) {
        Path trace = bench.work.resolve("trace");
        bench.plugin()
                .exporter(
                        "Odd",
                        "static { try { java.nio.file.Files.createFile(java.nio.file.Path.of(\"%s\")); } catch (java.io.IOException e) { } }"
                                .formatted(trace),
                        FINE,
                        FINE,
                        NOTHING)
                .attribute("Drumfall-Api", asked)
                .jar(oddJar());
        PluginFault fault = onlyFault(HostBench.LONG);
        assertThat(fault.kind()).isEqualTo(FaultKind.NEWER_API);
        assertThat(fault.sentence()).contains(asked, "this program has " + ApiVersion.CURRENT);
        assertThat(trace).doesNotExist();
    }

    @Test
    void a_class_named_but_not_there() {
        bench.plugin().service("stranger.Gone").jar(oddJar());
        PluginFault fault = onlyFault(HostBench.LONG);
        assertThat(fault.kind()).isEqualTo(FaultKind.LINKAGE);
        assertThat(fault.sentence()).contains("stranger.Gone");
    }

    @Test
    void a_class_that_needs_one_that_is_not_there() {
        bench.plugin()
                .source("stranger.Base", "package stranger; public class Base {}")
                .exporter("Odd", "private final Base base = new Base();", FINE, FINE, NOTHING)
                .without("stranger.Base")
                .jar(oddJar());
        PluginFault fault = onlyFault(HostBench.LONG);
        assertThat(fault.kind()).isEqualTo(FaultKind.LINKAGE);
        assertThat(fault.sentence()).contains("stranger/Base");
    }

    @Test
    void a_class_that_is_no_exporter() {
        bench.plugin()
                .source("stranger.Plain", "package stranger; public class Plain {}")
                .service("stranger.Plain")
                .jar(oddJar());
        assertThat(onlyFault(HostBench.LONG).kind()).isEqualTo(FaultKind.LINKAGE);
    }

    @Test
    void a_class_file_that_is_none() {
        bench.plugin()
                .service("stranger.Odd")
                .resource("stranger/Odd.class", "not a class")
                .jar(oddJar());
        assertThat(onlyFault(HostBench.LONG).kind()).isEqualTo(FaultKind.LINKAGE);
    }

    /** What an exporter may do wrong before it is even asked to export; "here" is the constructor, id or title. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            throw new IllegalStateException("by design");            | by design
            if (true) throw new Error("by design");                  | by design
            int depth = deeper(0);                                   | StackOverflowError
            byte[][] all = new byte[64][]; for (int i = 0; i < 64; i++) all[i] = new byte[Integer.MAX_VALUE - 8]; | OutOfMemoryError
            """)
    void an_exporter_that_throws_in_its_constructor_id_or_title(String body, String named) {
        String deeper = "static int deeper(int n) { return deeper(n + 1) + 1; } ";
        String returning = body.startsWith("throw") ? body : body + " return \"odd\";";
        for (List<String> place : List.of(
                List.of("{ if (true) { " + body + " } }", FINE, FINE),
                List.of("", returning, FINE),
                List.of("", FINE, returning))) {
            bench.plugin()
                    .exporter("Odd", deeper + place.get(0), place.get(1), place.get(2), NOTHING)
                    .jar(oddJar());
            PluginFault fault = onlyFault(HostBench.LONG);
            assertThat(fault.kind()).isEqualTo(FaultKind.FAILED_TO_START);
            assertThat(fault.sentence()).contains(named);
            assertThat(fault.detail()).as("where it came from").isNotBlank();
        }
    }

    @Test
    void an_exception_whose_own_message_throws() {
        bench.plugin()
                .exporter(
                        "Odd",
                        "static class Nasty extends RuntimeException { public String getMessage() { throw this; } public void printStackTrace(java.io.PrintWriter w) { throw this; } }",
                        "throw new Nasty();",
                        FINE,
                        NOTHING)
                .jar(oddJar());
        PluginFault fault = onlyFault(HostBench.LONG);
        assertThat(fault.kind()).isEqualTo(FaultKind.FAILED_TO_START);
        assertThat(fault.sentence()).contains("Nasty");
    }

    @Test
    void an_exporter_that_hangs_in_its_constructor() {
        bench.plugin()
                .exporter(
                        "Odd",
                        "{ while (true) { Thread.onSpinWait(); if (Thread.interrupted()) break; } }",
                        FINE,
                        FINE,
                        NOTHING)
                .jar(oddJar());
        assertThat(onlyFault(HostBench.SHORT_LOADING).kind()).isEqualTo(FaultKind.HUNG_AT_START);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Odd", "odd id", "../odd", "odd-", "1odd", "nul", "com1", "ö", "a\\u0000b"})
    void an_id_that_breaks_the_rule(String id) {
        bench.plugin().exporter("Odd", id, NOTHING).jar(oddJar());
        assertThat(onlyFault(HostBench.LONG).kind()).isEqualTo(FaultKind.BAD_ID);
    }

    @Test
    void an_id_or_title_too_long_or_absent() {
        bench.plugin()
                .exporter("Odd", "", "return \"a\".repeat(41);", FINE, NOTHING)
                .jar(oddJar());
        assertThat(onlyFault(HostBench.LONG).kind()).isEqualTo(FaultKind.BAD_ID);
        bench.plugin()
                .exporter("Odd", "", FINE, "return \"a\".repeat(81);", NOTHING)
                .jar(oddJar());
        assertThat(onlyFault(HostBench.LONG).kind()).isEqualTo(FaultKind.BAD_TITLE);
        bench.plugin()
                .exporter("Odd", "", FINE, "return \"two\\nlines\";", NOTHING)
                .jar(oddJar());
        assertThat(onlyFault(HostBench.LONG).kind()).isEqualTo(FaultKind.BAD_TITLE);
    }

    @Test
    void a_plugin_folder_that_is_a_file() throws IOException {
        Path file = bench.work.resolve("file");
        Files.writeString(file, "");
        try (PluginHost host =
                PluginHost.load(List.of(new PluginFolder(PluginFolder.Origin.USER, file)), HostBench.LONG)) {
            PluginFault fault = host.report().get(0).faults().get(0);
            HostBench.assertIsOneSentence(fault);
            assertThat(fault.kind()).isEqualTo(FaultKind.FOLDER_UNREADABLE);
            assertThat(fault.sentence()).contains(file.toString());
        }
    }

    /** The declaration of an exporter's settings, and what its fault says. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            return null;                                      | absent
            return java.util.Arrays.asList(yes("a"), null);   | absent
            return java.util.List.of(yes("a"), yes("a"));     | two have the id "a"
            return java.util.Collections.nCopies(41, yes("a")); | more than 40
            """)
    void settings_that_cannot_be_used(String body, String named) {
        PluginFault fault = settingsFault(body, HostBench.LONG);
        assertThat(fault.kind()).isEqualTo(FaultKind.BAD_SETTINGS);
        assertThat(fault.sentence()).contains("\"odd\"", named);
    }

    @Test
    void settings_that_throw_or_are_nonsense_or_never_come() {
        assertThat(settingsFault("throw new IllegalStateException(\"by design\");", HostBench.LONG))
                .satisfies(fault -> assertThat(fault.kind()).isEqualTo(FaultKind.FAILED_TO_START))
                .satisfies(fault -> assertThat(fault.sentence()).contains("by design"));
        assertThat(settingsFault(
                        "return java.util.List.of(new ExportSetting.Count(\"a\", \"A\", \"A.\", 0, 1, 9));",
                        HostBench.LONG))
                .satisfies(fault -> assertThat(fault.kind()).isEqualTo(FaultKind.FAILED_TO_START))
                .satisfies(fault -> assertThat(fault.sentence())
                        .contains("The usual value (0) of the setting (a) must be from 1 to 9."));
        assertThat(settingsFault("""
                        while (!Thread.interrupted()) { Thread.onSpinWait(); }
                        return java.util.List.of();
                        """, HostBench.SHORT_LOADING).kind()).isEqualTo(FaultKind.HUNG_AT_START);
    }

    private PluginFault settingsFault(String body, PluginLimits limits) {
        String members = """
                static ExportSetting<?> yes(String id) { return new ExportSetting.YesNo(id, "Yes", "Yes.", true); }
                public java.util.List<ExportSetting<?>> settings() { %s }
                """.formatted(body);
        bench.plugin().exporter("Odd", members, FINE, FINE, NOTHING).jar(oddJar());
        return onlyFault(limits);
    }
}
