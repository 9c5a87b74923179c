// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a plugin sees of the program, and of other plugins. */
class IsolationTest {
    @TempDir
    Path folder;

    private HostBench bench;

    @BeforeEach
    void setUp() {
        bench = new HostBench(folder);
    }

    private ExportOutcome look(String expression) {
        bench.plugin().exporter("Look", "look", """
                        try {
                            write(folder, "seen.txt", String.valueOf(%s));
                        } catch (ReflectiveOperationException absent) {
                            write(folder, "hidden.txt", "");
                        }
                        """.formatted(expression)).jar(bench.plugins.resolve("look.jar"));
        try (PluginHost host = bench.load()) {
            return bench.export(host, "look");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "picocli.CommandLine",
                "com.fasterxml.jackson.core.JsonFactory",
                "org.chocosolver.solver.Model",
                "drumfall.ui.plugin.PluginHost",
                "drumfall.plugin.api.trial.TrialHandover"
            })
    void the_programs_own_classes_and_libraries_are_hidden(String type) throws ClassNotFoundException {
        assertThat(Class.forName(type, false, getClass().getClassLoader())).isNotNull();
        look("Class.forName(\"" + type + "\")");
        assertThat(HostBench.tree(bench.target)).containsKey("look/hidden.txt");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "drumfall.solver.brief.Brief",
                "drumfall.solver.rating.TrainRater",
                "drumfall.solver.quantity.Quantity",
                "org.apache.commons.numbers.fraction.BigFraction",
                "javax.xml.stream.XMLStreamWriter",
                "java.sql.Connection"
            })
    void the_solvers_records_and_the_jdk_are_shown(String type) {
        look("Class.forName(\"" + type + "\")");
        assertThat(HostBench.tree(bench.target)).containsKey("look/seen.txt");
    }

    @Test
    void the_programs_resources_are_hidden() {
        look("Class.forName(\"stranger.Look\").getResource(\"/drumfall/ui/plugin/faults.properties\")");
        assertThat(HostBench.tree(bench.target)).containsEntry("look/seen.txt", "null");
    }

    @Test
    void two_plugins_may_bring_classes_of_one_name() {
        for (String name : java.util.List.of("a", "b")) {
            bench.plugin()
                    .source(
                            "stranger.Library",
                            "package stranger; class Library { static String says() { return \"" + name + "\"; } }")
                    .exporter("Same", name, "write(folder, \"said.txt\", Library.says());")
                    .jar(bench.plugins.resolve(name + ".jar"));
        }
        try (PluginHost host = bench.load()) {
            bench.export(host, "a");
            bench.export(host, "b");
        }
        assertThat(HostBench.tree(bench.target))
                .containsEntry("a/said.txt", "a")
                .containsEntry("b/said.txt", "b");
    }
}
