// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.trial.TrialHandover;
import drumfall.ui.plugin.PluginFolder.Origin;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PluginLoadingTest {
    private static final String HELLO = "write(folder, \"hello.txt\", handover.rating().train().toString());";

    @TempDir
    Path folder;

    private HostBench bench;

    @BeforeEach
    void setUp() {
        bench = new HostBench(folder);
    }

    @Test
    void a_jar_unknown_before_is_found_loaded_and_used() {
        bench.plugin()
                .exporter("Hello", "hello", HELLO)
                .attribute("Implementation-Title", "Greetings")
                .attribute("Implementation-Version", "2.5")
                .jar(bench.plugins.resolve("greetings.jar"));
        try (PluginHost host = bench.load()) {
            LoadedPlugin plugin = host.report().get(0);
            assertThat(plugin.faults()).isEmpty();
            assertThat(plugin.name()).isEqualTo("Greetings");
            assertThat(plugin.version()).isEqualTo("2.5");
            assertThat(plugin.folder()).isEqualTo(new PluginFolder(Origin.USER, bench.plugins));
            assertThat(plugin.file()).isEqualTo(bench.plugins.resolve("greetings.jar"));
            assertThat(plugin.exporters()).containsExactly(new ExporterEntry("hello", "hello title", List.of()));
            assertThat(bench.export(host, "hello")).isInstanceOf(ExportOutcome.Written.class);
        }
        assertThat(HostBench.tree(bench.target))
                .containsEntry("hello/hello.txt", "96/8 m1.5 | 64/8 m1 · 60/8 m1 · E30");
    }

    @Test
    void one_jar_may_hold_several_exporters_and_a_broken_one_does_not_keep_the_others_out() {
        bench.plugin()
                .exporter("First", "first", HELLO)
                .exporter(
                        "Broken",
                        "static { if (true) throw new IllegalStateException(\"no\"); }",
                        "return \"broken\";",
                        "return \"broken\";",
                        HELLO)
                .exporter("Third", "third", HELLO)
                .jar(bench.plugins.resolve("three.jar"));
        try (PluginHost host = bench.load()) {
            assertThat(host.exporters()).extracting(ExporterEntry::id).containsExactly("first", "third");
            assertThat(host.report().get(0).faults())
                    .extracting(PluginFault::kind)
                    .containsExactly(FaultKind.FAILED_TO_START);
        }
    }

    @Test
    void jars_are_listed_by_folder_and_then_by_name() {
        for (String name : List.of("b", "a")) {
            bench.plugin().exporter("Hello", "user-" + name, HELLO).jar(bench.plugins.resolve(name + ".jar"));
            bench.plugin()
                    .exporter("Hello", "program-" + name, HELLO)
                    .jar(folder.resolve("beside").resolve(name + ".jar"));
        }
        List<PluginFolder> folders = List.of(
                new PluginFolder(Origin.PROGRAM, folder.resolve("beside")),
                new PluginFolder(Origin.USER, bench.plugins),
                new PluginFolder(Origin.PROPERTY, folder.resolve("beside")));
        try (PluginHost host = PluginHost.load(folders)) {
            assertThat(host.exporters())
                    .extracting(ExporterEntry::id)
                    .containsExactly("program-a", "program-b", "user-a", "user-b");
            assertThat(host.report()).hasSize(4);
        }
    }

    @Test
    void of_two_exporters_with_one_id_the_first_is_used_and_the_second_named() {
        bench.plugin().exporter("First", "twin", HELLO).jar(bench.plugins.resolve("a.jar"));
        bench.plugin()
                .exporter("Second", "twin", "throw new IllegalStateException();")
                .jar(bench.plugins.resolve("b.jar"));
        try (PluginHost host = bench.load()) {
            assertThat(host.report().get(0).faults()).isEmpty();
            PluginFault fault = host.report().get(1).faults().get(0);
            assertThat(fault.kind()).isEqualTo(FaultKind.ID_TAKEN);
            assertThat(fault.sentence()).contains("b.jar", "\"twin\"", "a.jar");
            assertThat(bench.export(host, "twin")).isInstanceOf(ExportOutcome.Written.class);
        }
    }

    @Test
    void no_folder_at_all_is_no_fault() {
        try (PluginHost host = bench.load()) {
            assertThat(host.report()).isEmpty();
            PluginFault fault = HostBench.fault(bench.export(host, "outlines"));
            assertThat(fault.kind()).isEqualTo(FaultKind.UNKNOWN_EXPORTER);
            assertThat(fault.sentence()).contains("\"outlines\"", "none");
        }
        assertThat(bench.target).doesNotExist();
    }

    @Test
    void what_is_no_jar_by_name_is_passed_over() throws IOException {
        Files.createDirectories(bench.plugins);
        Files.writeString(bench.plugins.resolve("README.txt"), "Put jars here.");
        Files.writeString(bench.plugins.resolve(".half.jar"), "");
        try (PluginHost host = bench.load()) {
            assertThat(host.report()).isEmpty();
        }
    }

    @Test
    void the_folders_are_beside_the_program_then_by_property_then_the_users() {
        String list = folder.resolve("x") + java.io.File.pathSeparator + folder.resolve("y");
        assertThat(PluginFolders.of(Optional.of(folder.resolve("drumfall.jar")), list, folder.resolve("home")))
                .containsExactly(
                        new PluginFolder(Origin.PROGRAM, folder.resolve("plugins")),
                        new PluginFolder(Origin.PROPERTY, folder.resolve("x")),
                        new PluginFolder(Origin.PROPERTY, folder.resolve("y")),
                        new PluginFolder(Origin.USER, folder.resolve("home/.drumfall/plugins")));
        assertThat(PluginFolders.of(Optional.empty(), "", folder))
                .containsExactly(new PluginFolder(Origin.USER, folder.resolve(".drumfall/plugins")));
    }

    @Test
    void progress_reaches_whoever_watches() {
        bench.plugin()
                .exporter("Hello", "hello", "progress.at(0.5, \"half\\nway\"); progress.at(7, null);" + HELLO)
                .jar(bench.plugins.resolve("a.jar"));
        List<String> seen = new java.util.concurrent.CopyOnWriteArrayList<>();
        ExportProgress watcher = new ExportProgress() {
            @Override
            public void at(double share, String doing) {
                seen.add(share + " " + doing);
            }

            @Override
            public boolean cancelled() {
                return false;
            }
        };
        try (PluginHost host = bench.load()) {
            host.export("hello", TrialHandover.eightDays(), bench.target, watcher);
        }
        assertThat(seen).containsExactly("0.5 half way", "NaN null");
    }
}
